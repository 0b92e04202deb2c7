import { describe, expect, it } from "vitest";
import { plain, said } from "./said.ts";
import { saidTogether, saidWithout } from "./said-alike.ts";
import { finder, tell } from "./tell.ts";

const either = ([first = "", ...rest]: readonly string[]) =>
  rest.reduce((list, next) => said`${list} or ${next}`, first);
const open = (ref: string) => said`${ref} is open`;

describe("texts that are the same sentence with one value different", () => {
  it("are one sentence with a list in it, which another language can tell", () => {
    const together = saidTogether([open("F1"), open("F2")], either) ?? "";
    expect(plain(together)).toBe("F1 or F2 is open");
    const find = finder({ "{0} is open": "{0} en circuito abierto", "{0} or {1}": "{0} o {1}" });
    const teller = { find, category: () => "other", value: (text: string) => text };
    expect(tell(together, teller)).toBe("F1 o F2 en circuito abierto");
  });

  it("keep apart only what differs, however deep it stands", () => {
    const phase = (of: string) => said`Shows whether ${said`phase ${of} of ${"M1"}`} conducts.`;
    expect(plain(saidTogether([phase("U"), phase("V")], either) ?? "")).toBe(
      "Shows whether phase U or V of M1 conducts.",
    );
  });
});

describe("texts that differ otherwise", () => {
  it("are not one: another sentence, two values, or no sentence at all", () => {
    expect(saidTogether([open("F1"), said`${"F1"} is shorted`], either)).toBeNull();
    const between = (one: string, other: string) => said`${one} to ${other}`;
    expect(saidTogether([between("A", "B"), between("C", "D")], either)).toBeNull();
    expect(saidTogether(["F1 is open", "F2 is open"], either)).toBeNull();
  });
});

it("texts that are alike but for one value are the same without it", () => {
  expect(saidWithout(open("F1"), "F1")).toBe(saidWithout(open("F2"), "F2"));
  expect(saidWithout(open("F1"), "F2")).toBe(open("F1"));
});
