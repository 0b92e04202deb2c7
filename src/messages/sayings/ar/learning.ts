import type { Sayings } from "../../said.ts";

export const LEARNING: Sayings = {
  "All faults together": "جميع الأعطال معًا",
  "on a board that comes in": "في لوحة وصلت إلى الورشة",
  "the tables and all faults together lead to expect": "ما تجعل الجداول والأعطال كلها معا متوقعا",
  "what it is known by, whatever its name": "ما تعرف به مهما كان اسمها",
  "which logs that was taken from": "السجلات التي أخذ منها ذلك",
  "expected 1 to {0} letters": "المتوقع من 1 إلى {0} حرفا",
};
