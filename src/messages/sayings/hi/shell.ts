import type { Sayings } from "../../said.ts";

export const SHELL: Sayings = {
  Language: "भाषा",
  "Saved: attach it to the message.": "सहेज ली गई: इसे संदेश के साथ जोड़ें।",
  "The bench computer does not answer: no picture.": "बेंच का कंप्यूटर उत्तर नहीं दे रहा: तस्वीर नहीं मिली।",
  "Share or save the picture": "तस्वीर साझा करें या सहेजें",
  "The meter is reading for the grid.": "मीटर ग्रिड के लिए पढ़ रहा है।",
  "about {0}": "लगभग {0}",
  "the same net at": "वही नेट यहाँ भी:",
};
