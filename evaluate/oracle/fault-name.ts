import type { Fault } from "../../src/board/fault.ts";

/** What has to be cured: a part's reference, or `NET1~NET2`. */
export function nameOf(fault: Fault): string {
  return fault.of === "nets" ? fault.nets.join("~") : fault.part;
}
