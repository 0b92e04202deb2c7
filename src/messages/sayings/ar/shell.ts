import type { Sayings } from "../../said.ts";

export const SHELL: Sayings = {
  Language: "اللغة",
  "Saved: attach it to the message.": "حفظت: أرفقها بالرسالة.",
  "The bench computer does not answer: no picture.": "حاسوب المنضدة لا يجيب: لا صورة.",
  "Share or save the picture": "مشاركة الصورة أو حفظها",
  "The meter is reading for the grid.": "المقياس يقرأ للشبكة.",
  "about {0}": "نحو {0}",
  "the same net at": "الشبكة نفسها عند",
};
