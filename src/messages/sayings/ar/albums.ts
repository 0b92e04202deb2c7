import type { Sayings } from "../../said.ts";

export const ALBUMS: Sayings = {
  "Revision on the board: {0}": "إصدار اللوحة: {0}",
  "Photos and pins": "الصور والعلامات",
  "photos {0}, pins {1}": "الصور {0}، العلامات {1}",
  "Pinned on two screens": "وُضعت العلامات على جهازين",
  "{0} was pinned differently on two screens, {1}. Both are kept until you say which holds.":
    "وُضعت علامة {0} في موضعين مختلفين على جهازين، {1}. يُحتفظ بالاثنتين إلى أن تقول أيهما الصحيحة.",
  "{0}: not pinned at all": "{0}: بلا علامة",
  "{0} holds: {1}": "{0} هي الصحيحة: {1}",
  "Both hold: it has several pads": "كلتاهما صحيحة: لها عدة نقاط لحام",
  "Both ways in which {0} was pinned": "طريقتا وضع علامة {0}",
  "Two screens changed the photo of the {0}. Only one can hold, with the places pinned on it; the other is kept until you say which.":
    "غيّر جهازان صورة {0}. لا تصح إلا واحدة مع ما عليها من علامات؛ ويُحتفظ بالأخرى إلى أن تقول أيهما.",
  "Photo {0}": "الصورة {0}",
  "{0} holds: places pinned {1}": "{0} هي الصحيحة: المواضع المعلّمة {1}",
  "no photo": "لا توجد صورة",
  "Photo, {0}: arrow keys move the cross, with Shift in longer steps; Enter pins {1}":
    "صورة، {0}: مفاتيح الأسهم تحرك الصليب، ومع Shift بخطوات أطول؛ ويضع Enter علامة {1}",
  "The cross: {0}, {1} % from the left, {2} % from the top.":
    "الصليب: {0}، على بعد {1} % من اليسار و{2} % من الأعلى.",
  "pinned on {0}, this board is {1}": "وُضعت العلامة على {0}، وهذه اللوحة {1}",
  "Photo of a board marked {0}.": "صورة لوحة عليها {0}.",
  "The photo is of {0}, this board is {1}: parts may lie elsewhere.":
    "الصورة للإصدار {0} وهذه اللوحة {1}: قد تكون القطع في مواضع أخرى.",
  "Revision printed on the photo’s board, {0}": "الإصدار المطبوع على لوحة الصورة، {0}",
  "Revision printed on this board": "الإصدار المطبوع على هذه اللوحة",
};
