import { describe, expect, it } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { inEnglish } from "../messages/in-english.fixture.ts";
import { readCatalogueText } from "./catalogue-text.ts";
import { fitView, type TypedFit } from "./fit-view.ts";

const parsed = parseBoard(smallDrive());
if (!parsed.ok) throw new Error(parsed.problem);
const board = parsed.value;

function view(ref: string, typed: Partial<TypedFit> = {}) {
  const part = board.parts.get(ref);
  if (part === undefined) throw new Error(ref);
  return inEnglish(fitView(board, part, { original: {}, candidate: {}, ...typed }));
}

describe("a candidate typed beside the original", () => {
  it("is asked for what the role's rules weigh, with what the board file knows", () => {
    const fields = new Map(view("Q1").fields.map((field) => [field.name, field]));
    for (const name of [
      "volts",
      "hotAmps",
      "shortCircuitSeconds",
      "gateCoulombs",
      "copack",
      "pinOrder",
      "tab",
    ] as const)
      expect(fields.has(name), name).toBe(true);
    expect(fields.get("volts")).toMatchObject({ original: "600 V", unit: "V" });
    expect(fields.get("gateCoulombs")).toMatchObject({ original: null, unit: "C" });
    expect(fields.get("copack")?.choices).toEqual(["yes", "no"]);
    expect(fields.has("farads")).toBe(false);
  });

  it("is judged as soon as anything of it is known, and what is typed wrong is told beside its field", () => {
    expect(view("Q1").candidate).toBeNull();
    const typed = view("Q1", { candidate: { volts: "500V", gateCoulombs: "95 Ah" } });
    expect(typed.candidate?.fits).toBe("no");
    expect(typed.candidate?.findings[0]).toMatchObject({ rule: "blocking voltage", says: "bars" });
    expect(typed.problems).toEqual([
      { of: "candidate", name: "gateCoulombs", problem: '"95 Ah": expected gate charge in C' },
    ]);
  });

  it("is compared with the data sheet of the part that was there", () => {
    const typed = view("Q1", { original: { gateCoulombs: "100nC" }, candidate: { gateCoulombs: "160nC" } });
    const finding = typed.candidate?.findings.find(({ rule }) => rule === "gate charge");
    expect(finding).toMatchObject({ says: "bars", custom: "a bigger IGBT is always better" });
    expect(typed.ratings.find(({ name }) => name === "gateCoulombs")?.text).toBe("100 nC");
  });

  it("needs no name of its own to stand in for a chip: what is typed of the original gives it none", () => {
    const typed = view("U1", { original: { volts: "700V" }, candidate: { volts: "800V" } });
    expect(typed.candidate?.fits).not.toBe("no");
  });

  it("is read before it goes in: what was typed off the meter, whether a good one shows it, and what cannot be read", () => {
    const incoming = { "diode e c": "0,46", "diode c e": "0.01", "diode g e": "ol", "ohms a b": "7" };
    const reads = new Map(
      view("Q1", { incoming: { ...incoming, "diode e g": "-" } }).reads.map((one) => [one.key, one]),
    );
    expect(reads.get("diode e c")).toMatchObject({ reading: 0.46, good: "0.35 V to 0.55 V", fine: true });
    expect(reads.get("diode c e")).toMatchObject({ reading: 0.01, good: "OL", fine: false });
    expect(reads.get("diode g e")).toMatchObject({ reading: "OL", fine: true, problem: null });
    expect(reads.get("diode e g")).toMatchObject({ reading: null, fine: null, problem: expect.any(String) });
    expect(reads.get("diode g c")).toMatchObject({ reading: null, problem: null });
    expect(reads.has("ohms a b")).toBe(false);
  });

  it("goes onto its heatsink before it is soldered, by the torque of its case where that is known", () => {
    const mounting = (ref: string, packageName = "") =>
      view(ref, { original: packageName === "" ? {} : { package: packageName } }).mounting;
    expect(mounting("Q1", "TO-220")?.torque).toBe("0.55 to 0.68 N m, M3");
    expect(mounting("Q1")?.torque).toBeNull();
    const order = mounting("Q1")?.order.join("; ") ?? "";
    expect(order.indexOf("full torque")).toBeGreaterThan(order.indexOf("snug"));
    expect(order.indexOf("solder now")).toBeGreaterThan(order.indexOf("full torque"));
    expect(mounting("C1")).toBeNull();
  });

  it("keeps its leads and a rebuilt area off the heatsink by the steps of the tables: on 230 V 1.5 mm of air, 4 mm of surface, 6.3 mm damp (C14, C15)", () => {
    const told = view("Q1").mounting?.distance ?? "";
    expect(told).toMatch(/at most 2\.5 mm out of the solder, and 1\.5 mm of air/);
    expect(told).toMatch(/ 4 mm along the surface, 6\.3 mm where it is damp or dirty/);
    expect(told).toContain("bus of 325 V");
  });

  it("is checked and screwed down as the type that goes in, where the stock or the program knows its marking", () => {
    const good = (fitted: string) =>
      view("D1", { fitted }).reads.find(({ key }) => key === "diode a k")?.good;
    expect(good("")).toBe("0.40 V to 0.80 V");
    // a Schottky in the hand drops less, and that is no fault of it
    expect(good("1n5819")).toBe("0.10 V to 0.45 V");
    const drawer = "name,kind,volts,copack,package,tab,count\nK40N,igbt,600V,no,TO-220,live,2\n";
    const read = readCatalogueText(drawer);
    if (!read.ok) throw new Error(read.problem);
    const q1 = board.parts.get("Q1");
    if (q1 === undefined) throw new Error("Q1");
    const fit = inEnglish(
      fitView(
        board,
        q1,
        { original: {}, candidate: {}, fitted: "K40N" },
        read.value.lines.map(({ stock }) => stock),
      ),
    );
    expect(fit.reads.find(({ key }) => key === "diode e c")?.good).toBe("OL");
    expect(fit.mounting?.torque).toBe("0.55 to 0.68 N m, M3");
    expect(fit.incoming.at(-1)?.do).toBe("tab to the middle pin");
  });

  it("stands side by side with what lies in the drawer, will it do or not, each figure with what is against it", () => {
    const drawer =
      "name,kind,volts,gateCoulombs,count,place\nK6,igbt,650V,90nC,1,a\nK6,igbt,,,2,b\nK5,igbt,500V,,9,c\nK7,igbt,700V,,,\n";
    const read = readCatalogueText(drawer);
    const q1 = board.parts.get("Q1");
    if (!read.ok || q1 === undefined) throw new Error("no drawer");
    const typed = { original: { gateCoulombs: "100nC" }, candidate: {} };
    const lines = read.value.lines.map(({ stock }) => stock);
    const { sideBySide } = inEnglish(fitView(board, q1, typed, lines));
    expect(sideBySide?.columns).toEqual([
      { name: "K6", fits: "fits with conditions", inHouse: true },
      { name: "K5", fits: "no", inHouse: true },
    ]);
    const rows = new Map(sideBySide?.rows.map(({ rating, was, cells }) => [rating, [was, cells]]));
    expect(rows.get("volts")).toEqual([
      "600 V",
      [
        { text: "650 V", against: null },
        { text: "500 V", against: "bars" },
      ],
    ]);
    expect(rows.get("gateCoulombs")).toEqual([
      "100 nC",
      [
        { text: "90.0 nC", against: null },
        { text: null, against: "open" },
      ],
    ]);
    // nobody knows its recovery, and no rule of the place asks for it
    expect(rows.has("recoverySeconds")).toBe(false);
    expect(view("C1").sideBySide).toBeNull();
  });

  it("is not asked for what does not concern its place", () => {
    const asked = (ref: string) => view(ref).rules.map(({ id, wants }) => [id, wants]);
    for (const ref of board.parts.keys())
      for (const [id, wants] of asked(ref)) expect(wants, `${ref} ${id}`).not.toBe("");
    // nothing stands beside Q1, but five others are of its set
    expect(asked("Q1").map(([id]) => id)).not.toContain("a pair together");
    expect(asked("Q1")).toContainEqual(["one type in all legs", "one type in the whole set"]);
    // a switcher chip is no MOSFET
    expect(asked("U1").map(([id]) => id)).not.toContain("on-resistance");
  });

  it("stands beside the types that many makers sell, those that will not do left out", () => {
    const { offers } = view("DZ1");
    expect(offers.length).toBeGreaterThan(0);
    expect(offers.length).toBeLessThanOrEqual(4);
    expect(offers.every(({ fits }) => fits !== "no")).toBe(true);
    expect(offers[0]?.name).toBe("1N5248B");
  });
});
