import type { Sayings } from "../../said.ts";

export const LEARNING: Sayings = {
  "All faults together": "सभी ख़राबियाँ मिलाकर",
  "on a board that comes in": "आई हुई एक बोर्ड पर",
  "the tables and all faults together lead to expect": "तालिकाएँ और सभी खराबियाँ मिलकर जो अपेक्षा देती हैं",
  "what it is known by, whatever its name": "नाम जो भी हो, वह किससे पहचाना जाता है",
  "which logs that was taken from": "वह किन लॉग से लिया गया",
  "expected 1 to {0} letters": "1 से {0} अक्षर अपेक्षित थे",
};
