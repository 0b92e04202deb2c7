import { type Fault, faultName } from "./fault.ts";

const MODE_WORDS: Readonly<Record<string, string>> = {
  short: "shorted",
  leaky: "leaky",
  open: "open",
  drift: "off its value",
};

/** A fault by its name as it is said at the bench: `Q3.ce:short` -> `Q3 ce shorted`, `A~B:leaky` -> `dirt between A and B`. */
export function faultNameWords(name: string): string {
  const colon = name.lastIndexOf(":");
  const where = name.slice(0, colon);
  const mode = name.slice(colon + 1).split("@")[0];
  if (where.includes("~")) return `dirt between ${where.split("~").join(" and ")}`;
  return `${where.replace(".", " ")} ${MODE_WORDS[mode] ?? mode}`;
}

/** The same for a fault. */
export function faultWords(fault: Fault): string {
  return faultNameWords(faultName(fault));
}
