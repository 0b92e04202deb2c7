/** Will this one do: the cases of `substitution-cases.fixture.ts`, all common practice but where a rule names its source. */
import { describe, expect, it } from "vitest";
import { inEnglish } from "../messages/in-english.fixture.ts";
import { plain } from "../messages/said.ts";
import { type KnownRole, likeOriginal, ORIGINALS, placeOf } from "./originals.fixture.ts";
import { RULE_TABLE } from "./rule-table.ts";
import { CASES, type SubstitutionCase } from "./substitution-cases.fixture.ts";
import { judge, objects } from "./verdict.ts";

function run(one: SubstitutionCase) {
  const { fits, findings } = inEnglish(judge(one.wanted, one.candidate));
  return { fits, findings, objecting: findings.filter(objects).map((finding) => finding.rule) };
}

describe("will this one do?", () => {
  it.each(CASES.map((one) => [one.role, one.words, one.fits, one] as const))(
    "%s, %s: %s",
    (_role, _words, fits, one) => {
      const verdict = run(one);
      expect({ fits: verdict.fits, rules: verdict.objecting.sort() }).toEqual({
        fits,
        rules: [...one.rules].sort(),
      });
    },
  );

  it.each(
    CASES.filter((one) => one.custom !== null).map((one) => [one.custom ?? "", one.words, one] as const),
  )('names the custom "%s" at: %s', (custom, _words, one) => {
    expect(run(one).findings.map((finding) => finding.custom)).toContain(custom);
  });

  it("is asked in over a hundred cases, each another", () => {
    expect(CASES.length).toBeGreaterThan(100);
    expect(new Set(CASES.map((one) => `${one.role}: ${one.words}`)).size).toBe(CASES.length);
  });

  it("is answered yes for the original itself in every role", () => {
    for (const role of Object.keys(ORIGINALS) as KnownRole[])
      expect([role, judge(placeOf(role), { type: likeOriginal(role), used: false }).fits]).toEqual([
        role,
        "fits",
      ]);
  });

  it("is never answered yes where a rating that matters is not known", () => {
    for (const role of Object.keys(ORIGINALS) as KnownRole[]) {
      const bare = { ...likeOriginal(role), name: "another type", ratings: {} };
      expect([role, judge(placeOf(role), { type: bare, used: false }).fits]).not.toEqual([role, "fits"]);
    }
  });

  it("asks nothing of the very type that was there but where it goes and where it comes from", () => {
    const bare = { ...placeOf("motor switch"), ratings: {} };
    const type = likeOriginal("motor switch");
    expect(judge(bare, { type, used: false }).fits).toBe("fits");
    expect(
      judge({ ...bare, parallel: ["Q2"] }, { type, used: true })
        .findings.filter(objects)
        .map(({ rule }) => rule),
    ).toEqual(["pulled", "a pair together"]);
    // but what the board file says against it still counts
    expect(
      judge(placeOf("motor switch"), { type: likeOriginal("motor switch", { volts: 400 }), used: false })
        .fits,
    ).toBe("no");
  });

  it("puts what bars first and what was kept last", () => {
    const order = ["bars", "asks", "open", "notes", "meets"];
    for (const one of CASES) {
      const said = run(one).findings.map((finding) => order.indexOf(finding.says));
      expect(said).toEqual([...said].sort((a, b) => a - b));
    }
  });
});

describe("the rule table", () => {
  it("says of every rule why, and by what mark; what was seen names its source", () => {
    for (const row of RULE_TABLE) {
      expect(plain(row.why).length, row.id).toBeGreaterThan(5);
      expect(row.mark === "seen" || row.mark === "seen-2nd", row.id).toBe(row.source !== null);
    }
  });

  it("has every rule object, or note something, in at least one case", () => {
    const findings = CASES.flatMap((one) => run(one).findings);
    const heard = new Set(findings.filter(({ says }) => says !== "meets").map(({ rule }) => rule));
    expect(RULE_TABLE.map((row) => row.id).filter((id) => !heard.has(id))).toEqual([]);
  });
});
