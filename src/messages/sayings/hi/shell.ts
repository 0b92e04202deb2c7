import type { Sayings } from "../../said.ts";

export const SHELL: Sayings = {
  Language: "भाषा",
};
