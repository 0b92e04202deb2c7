import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { inEnglish } from "../messages/in-english.fixture.ts";
import { csvText } from "../units/csv-text.ts";
import { takeIn } from "./catalogue-import.ts";
import { COLUMNS, catalogueCells, type ReadCatalogue } from "./catalogue-rows.ts";
import { readCatalogueText } from "./catalogue-text.ts";
import { STANDARD_LINES, STANDARD_TYPES } from "./standard-types.ts";

function read(text: string): ReadCatalogue {
  const made = readCatalogueText(text);
  if (!made.ok) throw new Error(made.problem);
  return inEnglish(made.value);
}

const stockOf = (text: string) => read(text).lines.map(({ stock }) => stock);
const reasons = (text: string) => read(text).refused.map(({ line, reasons: why }) => [line, ...why]);

describe("a catalogue file", () => {
  it("gives lines of stock, figures with their units", () => {
    const [igbt, pulled] = stockOf(
      "Name,kind,Hot Amps,volts,gate_coulombs,copack,count,place,price,used,donor\n" +
        "K40X,igbt,20A,650V,95nC,yes,3,drawer 4,2.60,,\n" +
        "K40X,,,,,,2,shelf,,,heat pump 12\n",
    );
    expect(igbt).toMatchObject({ count: 3, place: "drawer 4", price: 2.6, used: false, donor: null });
    expect(igbt?.type).toMatchObject({
      name: "K40X",
      kind: "igbt",
      ratings: { hotAmps: 20, volts: 650, gateCoulombs: 95e-9, copack: true },
    });
    // the same type on a donor board: pulled, whatever the column says
    expect(pulled).toMatchObject({ count: 2, used: true, donor: "heat pump 12" });
    expect(pulled?.type).toEqual(igbt?.type);
  });

  it("needs no more than the name of a standard type", () => {
    const [line] = stockOf("name,count,place\n1N4007,50,strip 2\n");
    expect(line?.type).toMatchObject({ kind: "diode", ratings: { volts: 1000, type: "rectifier" } });
  });

  it("refuses what may be a thousand or a fraction, and one line of stock given twice", () => {
    expect(
      reasons(
        'name,kind,count,place,price\nA,diode,1,x,"1,200"\nA,diode,2,x,1.20\nA,diode,5,x,1.20\nA,diode,5,y,1.20\n',
      ),
    ).toEqual([
      [2, 'price: "1,200": a thousand or a fraction? Write 1200, or 1.2'],
      [4, "stands in line 3 already, in the same place"],
    ]);
  });

  it("refuses a row with every reason it has, and none of it counts", () => {
    expect(
      reasons(
        "name,kind,volts,count,price,used\nA,igbt,600A,-1,x,maybe\n,diode,,,,\nB,dioed,,,,\nC,,,,,\nD,diode,5V,1.5,,\n",
      ),
    ).toEqual([
      [
        2,
        'volts: "600A": expected voltage in V',
        'count: "-1": expected a whole number of 0 or more',
        'price: "x": expected an amount of 0 or more',
        'used: "maybe": expected yes or no',
      ],
      [3, "name: is missing"],
      [4, 'kind: "dioed" is no kind of part; did you mean "diode"?'],
      [5, "kind: is missing, and no row above and no standard type has this name"],
      [6, 'count: "1.5": expected a whole number of 0 or more'],
    ]);
  });

  it("refuses a row that says another thing of a name than was said before", () => {
    expect(reasons("name,kind,volts\n1N4007,diode,600V\nX,igbt,600V\nX,,650V\nX,mosfet,\n")).toEqual([
      [2, "volts: 600, but 1N4007 is known with 1000; a part of other figures needs a name of its own"],
      [4, "volts: 650, but X was given 600 before"],
      [5, 'kind: "mosfet", but the X known before is a igbt'],
    ]);
  });

  it("refuses a row with more cells than columns, or a broken quote", () => {
    expect(reasons('name,kind\nA,diode,5\n"B,diode\nC,diode\n')).toEqual([
      [2, "3 cells under 2 columns"],
      [3, "a quote is opened and not closed"],
    ]);
  });

  it.each([
    ["nmae,kind\n", 'line 1: "nmae" is no column of a catalogue; did you mean "name"?'],
    ["name,volts,Volts\n", 'line 1: the column "volts" stands twice'],
    ["kind,volts\n", 'line 1: there is no column "name"; the first line names the columns'],
  ])("is refused whole where its header %j cannot be read", (text, problem) => {
    expect(inEnglish(readCatalogueText(text))).toEqual({ ok: false, problem });
  });

  it("of what comes with the program is read back as it was written", () => {
    const text = csvText(catalogueCells(STANDARD_LINES));
    const { lines, refused } = read(text);
    expect(refused).toEqual([]);
    expect(lines.map(({ stock }) => [stock.type.name, stock.type.kind, stock.type.ratings])).toEqual(
      STANDARD_TYPES.map(({ name, kind, ratings }) => [name, kind, ratings]),
    );
  });

  it("of 20 000 rows with 500 bad ones tells each bad row's line and reason", () => {
    const rows = Array.from({ length: 20_000 }, (_, at) =>
      at % 40 === 7 ? [`part ${at}`, "igbt", "600A", "1"] : [`part ${at}`, "igbt", "600V", "1"],
    );
    const { lines, refused } = read(csvText([["name", "kind", "volts", "count"], ...rows]));
    expect([lines.length, refused.length]).toEqual([19_500, 500]);
    expect(refused.map(({ line }) => line)).toEqual(Array.from({ length: 500 }, (_, at) => 40 * at + 7 + 2));
    expect(new Set(refused.flatMap((row) => row.reasons))).toEqual(
      new Set(['volts: "600A": expected voltage in V']),
    );
  });
});

describe("the format page", () => {
  it("names every column of a catalogue file", () => {
    const page = readFileSync(new URL("../../docs/formats.md", import.meta.url), "utf8");
    const section = page.slice(page.indexOf("## Catalogue file"), page.indexOf("## What this program adds"));
    const words = new Set(section.match(/\w+/g));
    expect(COLUMNS.filter((column) => !words.has(column))).toEqual([]);
  });
});

describe("rows taken into a stock", () => {
  const line = (text: string) => stockOf(`name,count,place,donor\n${text}\n`);

  it("replace the line of the same type, place and origin, and follow where there is none", () => {
    const stock = [...line("1N4007,50,strip 2"), ...line("1N4148,10,strip 1")];
    const taken = takeIn(stock, [
      ...line("1N4007,40,strip 2"),
      ...line("1N4007,2,,board 7"),
      ...line("1N4148,10,strip 1"),
    ]);
    expect(inEnglish(taken.rows)).toEqual([
      { fate: "changed", changes: ["count: 50 becomes 40"] },
      { fate: "new", changes: [] },
      { fate: "same", changes: [] },
    ]);
    expect(taken.stock.map(({ type, count, place, donor }) => [type.name, count, place, donor])).toEqual([
      ["1N4007", 40, "strip 2", null],
      ["1N4148", 10, "strip 1", null],
      ["1N4007", 2, null, "board 7"],
    ]);
    expect(stock[0]?.count).toBe(50);
  });

  it("correct the ratings of a type that was only counted, tell of each what it becomes, and leave no two lines that disagree", () => {
    const stock = stockOf("name,kind,volts,count,place\nX,igbt,600V,3,drawer 4\nX,igbt,600V,1,shelf\n");
    const known = stock.map(({ type }) => type);
    const file = "name,volts,hotAmps,count,place,price\nX,650V,30A,4,drawer 4,2.5\nX,,,2,bag,\n";
    const said = readCatalogueText(file, known);
    if (!said.ok) throw new Error(said.problem);
    expect(said.value.refused).toEqual([]);
    const { rows, stock: after } = takeIn(
      stock,
      said.value.lines.map((one) => one.stock),
    );
    const ratings = [
      "voltage: 600 V becomes 650 V, in its other line as well",
      "current at 100 degC case: 30.0 A, not known before, in its other line as well",
    ];
    expect(inEnglish(rows[0])).toEqual({
      fate: "changed",
      changes: [...ratings, "count: 3 becomes 4", "price: none becomes 2.5"],
    });
    expect(rows[1]).toEqual({ fate: "new", changes: [] });
    expect(after.map(({ place, type }) => [place, type.ratings.volts, type.ratings.hotAmps])).toEqual([
      ["drawer 4", 650, 30],
      ["shelf", 650, 30],
      ["bag", 650, 30],
    ]);
    // what was written can be read again
    const again = readCatalogueText(csvText(catalogueCells(after)));
    expect(again.ok && again.value.refused).toEqual([]);
  });

  it("change nothing when they are taken in again", () => {
    const incoming = [...line("1N4007,40,strip 2"), ...line("1N5819,2,,board 7")];
    const once = takeIn([], incoming).stock;
    const twice = takeIn(once, incoming);
    expect(twice.rows.map(({ fate }) => fate)).toEqual(["same", "same"]);
    expect(twice.stock).toEqual(once);
  });
});

describe("the types that come with the program", () => {
  it("have one name each, a source each, and only ratings that are known", () => {
    expect(new Set(STANDARD_TYPES.map(({ name }) => name)).size).toBe(STANDARD_TYPES.length);
    for (const { name, source, ratings } of STANDARD_TYPES) {
      expect(source?.words, name).toMatch(/.{5}/);
      expect(
        Object.values(ratings).every((value) => !Number.isNaN(value)),
        name,
      ).toBe(true);
    }
  });

  it("rest on a public source each, none on memory", () => {
    expect(STANDARD_TYPES.filter(({ source }) => source?.mark !== "seen").map(({ name }) => name)).toEqual(
      [],
    );
  });

  it("tell of a varistor what its marking tells, and of the 14 mm discs what their data sheet adds", () => {
    const of = (name: string) => STANDARD_TYPES.find((one) => one.name === name)?.ratings;
    expect(of("20D561K")).toEqual({ volts: 560, discMm: 20, tolerance: 0.1 });
    expect(of("14D561K")).toEqual({ volts: 560, discMm: 14, tolerance: 0.1, acVolts: 350 });
  });

  it("tell no pin order of a type of which makers differ", () => {
    expect(STANDARD_TYPES.find(({ name }) => name === "431")?.ratings.pinOrder).toBeUndefined();
  });

  it.each([
    ["1N4007", { volts: 1000, amps: 1, surgeAmps: 30 }],
    ["1N5408", { volts: 1000, amps: 3, surgeAmps: 200 }],
    ["1N4937", { volts: 600, recoverySeconds: 200e-9 }],
    ["1N5819", { volts: 40, dropVolts: 0.6 }],
    ["1N4148", { volts: 100, recoverySeconds: 4e-9 }],
    ["1N5248B", { volts: 18, watts: 0.5 }],
    ["1N5245B", { volts: 15 }],
    ["1N4733A", { volts: 5.1, watts: 1 }],
    ["1N4744A", { volts: 15 }],
    ["1N4746A", { volts: 18 }],
    ["1N4752A", { volts: 33 }],
    ["GBPC2506", { volts: 600, amps: 25, surgeAmps: 300 }],
  ])("count their series right: %s", (name, ratings) => {
    expect(STANDARD_TYPES.find((one) => one.name === name)?.ratings).toMatchObject(ratings);
  });
});
