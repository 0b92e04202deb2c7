import type { Sayings } from "../../said.ts";

export const ALBUMS: Sayings = {
  "Revision on the board: {0}": "बोर्ड पर संशोधन: {0}",
  "Photos and pins": "फ़ोटो और निशान",
  "photos {0}, pins {1}": "फ़ोटो {0}, निशान {1}",
  "Pinned on two screens": "दो उपकरणों पर निशान लगाए गए",
  "{0} was pinned differently on two screens, {1}. Both are kept until you say which holds.":
    "{0} का निशान दो उपकरणों पर अलग-अलग जगह लगाया गया, {1}। जब तक आप न बताएँ कि कौन सा सही है, दोनों रखे जाते हैं।",
  "{0}: not pinned at all": "{0}: कोई निशान नहीं",
  "{0} holds: {1}": "{0} सही है: {1}",
  "Both hold: it has several pads": "दोनों सही हैं: इसके कई पैड हैं",
  "Both ways in which {0} was pinned": "{0} के निशान के दोनों रूप",
  "Two screens changed the photo of the {0}. Only one can hold, with the places pinned on it; the other is kept until you say which.":
    "दो उपकरणों ने {0} की फ़ोटो बदली। अपने निशानों के साथ केवल एक ही रह सकती है; जब तक आप न बताएँ कि कौन सी, दूसरी भी रखी जाती है।",
  "Photo {0}": "फ़ोटो {0}",
  "{0} holds: places pinned {1}": "{0} सही है: निशान लगी जगहें {1}",
  "no photo": "कोई फ़ोटो नहीं",
  "Photo, {0}: arrow keys move the cross, with Shift in longer steps; Enter pins {1}":
    "फ़ोटो, {0}: तीर कुंजियाँ क्रॉस को हिलाती हैं, Shift के साथ लंबे क़दमों में; Enter से {1} का निशान लगता है",
  "The cross: {0}, {1} % from the left, {2} % from the top.": "क्रॉस: {0}, बाएँ से {1} %, ऊपर से {2} %।",
  "pinned on {0}, this board is {1}": "{0} पर निशान लगाया गया, यह बोर्ड {1} है",
  "Photo of a board marked {0}.": "{0} अंकित बोर्ड की फ़ोटो।",
  "The photo is of {0}, this board is {1}: parts may lie elsewhere.":
    "फ़ोटो {0} की है, यह बोर्ड {1} है: पुर्ज़े दूसरी जगह हो सकते हैं।",
  "Revision printed on the photo’s board, {0}": "फ़ोटो वाले बोर्ड पर छपा संशोधन, {0}",
  "Revision printed on this board": "इस बोर्ड पर छपा संशोधन",
};
