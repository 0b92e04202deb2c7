/**
 * The catalogue that comes with the program: JEDEC-numbered and generic types that many makers sell under one number. Each row says where its
 * figures were read; a rating that is left out was not read and is not assumed.
 */
import type { PartKind } from "../board/board.ts";
import type { Mark } from "../units/mark.ts";
import { type CatalogueType, notInHouse, type StockLine } from "./catalogue.ts";
import type { Ratings } from "./ratings.ts";

interface Origin {
  readonly mark: Mark;
  readonly words: string;
}

const seen = (words: string): Origin => ({ mark: "seen", words });
/** What the marking itself says: disc, volts at a milliampere, tolerance. */
const VARISTOR_MARKING = seen("marking of varistors, MakersWorkbench wiki");
const VARISTORS_14D = seen("14D series data sheet, en.eeworld.com 3777128");

function type(name: string, kind: PartKind, ratings: Ratings, origin: Origin): CatalogueType {
  return { name, kind, ratings, source: { id: name, ...origin } };
}

/** A series: names with one rating that climbs, the rest alike. */
function series(
  names: readonly string[],
  volts: readonly number[],
  kind: PartKind,
  alike: Ratings,
  origin: Origin,
): readonly CatalogueType[] {
  return names.map((name, at) => type(name, kind, { volts: volts[at] ?? Number.NaN, ...alike }, origin));
}

/** `1N4001` to `1N4007`. */
function numbered(head: string, from: number, count: number, tail = ""): readonly string[] {
  return Array.from({ length: count }, (_, at) => `${head}${from + at}${tail}`);
}

const SEVEN = [50, 100, 200, 400, 600, 800, 1000];
const NINE = [50, 100, 200, 300, 400, 500, 600, 800, 1000];

const DIODES: readonly CatalogueType[] = [
  ...series(
    numbered("1N", 4001, 7),
    SEVEN,
    "diode",
    { type: "rectifier", amps: 1, surgeAmps: 30, dropVolts: 1.1, package: "DO-41" },
    seen("1N4001GP to 1N4007GP data sheet, dtsheet.com 738906"),
  ),
  ...series(
    numbered("1N", 5400, 9),
    NINE,
    "diode",
    { type: "rectifier", amps: 3, surgeAmps: 200, dropVolts: 1.2, package: "DO-201AD" },
    seen("1N5400 to 1N5408 data sheet, slideshare.net 39498127"),
  ),
  ...series(
    numbered("1N", 4933, 5),
    [50, 100, 200, 400, 600],
    "diode",
    { type: "fast", amps: 1, surgeAmps: 30, dropVolts: 1.2, recoverySeconds: 200e-9, package: "DO-41" },
    seen("1N4933 to 1N4937 data sheet, doc 88508"),
  ),
  ...series(
    ["US1A", "US1B", "US1D", "US1G"],
    [50, 100, 200, 400],
    "diode",
    { type: "fast", amps: 1, surgeAmps: 30, recoverySeconds: 50e-9, package: "SMA" },
    seen("US1A to US1M data sheet, dtsheet.com 333896"),
  ),
  ...series(
    ["US1J", "US1K", "US1M"],
    [600, 800, 1000],
    "diode",
    { type: "fast", amps: 1, surgeAmps: 30, dropVolts: 1.7, recoverySeconds: 75e-9, package: "SMA" },
    seen("US1A to US1M data sheet, dtsheet.com 333896"),
  ),
  ...series(
    ["SUF4004"],
    [400],
    "diode",
    { type: "fast", amps: 1, surgeAmps: 30, recoverySeconds: 50e-9, package: "DO-213AB" },
    seen("SUF4001 to SUF4007 data sheet, dtsheet.com 1286897"),
  ),
  ...series(
    ["SUF4007"],
    [1000],
    "diode",
    { type: "fast", amps: 1, surgeAmps: 30, dropVolts: 1.7, recoverySeconds: 75e-9, package: "DO-213AB" },
    seen("SUF4001 to SUF4007 data sheet, dtsheet.com 1286897"),
  ),
  type(
    "FR107",
    "diode",
    {
      type: "fast",
      volts: 1000,
      amps: 1,
      surgeAmps: 30,
      dropVolts: 1.3,
      recoverySeconds: 500e-9,
      package: "DO-41",
    },
    seen("FR101 to FR107 data sheet, manualmachine.com 3900544"),
  ),
  type(
    "1N5817",
    "diode",
    { type: "schottky", volts: 20, amps: 1, surgeAmps: 30, dropVolts: 0.45, package: "DO-41" },
    seen("1N5817 to 1N5819 data sheet, dtsheet.com 261003"),
  ),
  type(
    "1N5818",
    "diode",
    { type: "schottky", volts: 30, amps: 1, surgeAmps: 30, dropVolts: 0.55, package: "DO-41" },
    seen("1N5817 to 1N5819 data sheet, dtsheet.com 261003"),
  ),
  type(
    "1N5819",
    "diode",
    { type: "schottky", volts: 40, amps: 1, surgeAmps: 30, dropVolts: 0.6, package: "DO-41" },
    seen("1N5817 to 1N5819 data sheet, dtsheet.com 261003"),
  ),
  type(
    "1N5822",
    "diode",
    { type: "schottky", volts: 40, amps: 3, surgeAmps: 80, package: "DO-201AD" },
    seen("1N5822 data sheet, datasheetcafe.com"),
  ),
  type(
    "1N4148",
    "diode",
    { type: "signal", volts: 100, amps: 0.15, dropVolts: 1, recoverySeconds: 4e-9, package: "DO-35" },
    seen("1N4148 data sheet, dtsheet.com 1174254"),
  ),
  type(
    "1N4148W",
    "diode",
    { type: "signal", volts: 75, amps: 0.15, recoverySeconds: 4e-9, package: "SOD-123" },
    seen("1N4148W data sheet, datasheetgo.com 133265"),
  ),
];

const BRIDGES: readonly CatalogueType[] = [
  [15, 300, 375],
  [25, 300, 375],
  [35, 400, 660],
].flatMap(([amps = 0, surgeAmps = 0, meltingAmps2Seconds = 0]) =>
  series(
    ["06", "08", "10"].map((tail) => `GBPC${amps}${tail}`),
    [600, 800, 1000],
    "bridge",
    { amps, surgeAmps, meltingAmps2Seconds, package: "GBPC" },
    seen("GBPC15/25/35 data, dtsheet.com 2981566"),
  ),
);

/** 1N5221B and on, 0.5 W, 5 %. */
const HALF_WATT = [
  2.4, 2.5, 2.7, 2.8, 3, 3.3, 3.6, 3.9, 4.3, 4.7, 5.1, 5.6, 6, 6.2, 6.8, 7.5, 8.2, 8.7, 9.1, 10, 11, 12, 13,
  14, 15, 16, 17, 18, 19, 20, 22, 24,
];
/** 1N4728A and on, 1 W, 5 %. */
const ONE_WATT = [
  3.3, 3.6, 3.9, 4.3, 4.7, 5.1, 5.6, 6.2, 6.8, 7.5, 8.2, 9.1, 10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30,
  33,
];
const FIRST_HALF_WATT = 5221;
const FIRST_ONE_WATT = 4728;

const ZENERS: readonly CatalogueType[] = [
  ...series(
    numbered("1N", FIRST_HALF_WATT, HALF_WATT.length, "B"),
    HALF_WATT,
    "zener",
    { watts: 0.5, tolerance: 0.05, package: "DO-35" },
    seen("1N5221B to 1N5281B data sheet, datasheet.directory cb88c576"),
  ),
  ...series(
    numbered("1N", FIRST_ONE_WATT, ONE_WATT.length, "A"),
    ONE_WATT,
    "zener",
    { watts: 1, tolerance: 0.05, package: "DO-41" },
    seen("1N4728A to 1N4758A data sheet, eeworld.com.cn 45364409"),
  ),
];

const SMALL_TRANSISTORS: readonly CatalogueType[] = [
  type(
    "2N3904",
    "bjt",
    { polarity: "npn", volts: 40, amps: 0.2, package: "TO-92" },
    seen("2N3904 data sheet V1.0 of 31/05/05"),
  ),
  type(
    "2N3906",
    "bjt",
    { polarity: "pnp", volts: 40, amps: 0.2, package: "TO-92" },
    seen("2N3906 data sheet, datasheetcafe.com: its pin order was not read"),
  ),
  type(
    "2N4401",
    "bjt",
    { polarity: "npn", volts: 40, amps: 0.6, pinOrder: "E B C", package: "TO-92" },
    seen("2N4401 and 2N4403 data sheet V1.0 of 31/05/05, datasheetarchive.com DSA00251770"),
  ),
  type(
    "2N4403",
    "bjt",
    { polarity: "pnp", volts: 40, amps: 0.6, pinOrder: "E B C", package: "TO-92" },
    seen("2N4401 and 2N4403 data sheet V1.0 of 31/05/05, datasheetarchive.com DSA00251770"),
  ),
  type(
    "2N5551",
    "bjt",
    { polarity: "npn", volts: 160, amps: 0.6, pinOrder: "E B C", package: "TO-92" },
    seen("2N5550/D data sheet rev 3, scribd.com 360321290"),
  ),
  type(
    "2N5401",
    "bjt",
    { polarity: "pnp", volts: 150, amps: 0.6, pinOrder: "E B C", package: "TO-92" },
    seen("2N5401/D data sheet rev 4, studylib.net 18216923"),
  ),
];

const SUPPLY_PARTS: readonly CatalogueType[] = [
  type(
    "4N25",
    "opto",
    { use: "feedback", transferLow: 0.2, isolationVolts: 5300, package: "DIP-6" },
    seen("4N25 to 4N28 data sheet, ic118.com: 7500 V peak"),
  ),
  type(
    "4N35",
    "opto",
    { use: "feedback", transferLow: 1, recoverySeconds: 10e-6, package: "DIP-6" },
    seen("4N35 data sheet, manualshelf.com p. 5"),
  ),
  type(
    "7805",
    "regulator",
    { volts: 5, amps: 1, pinOrder: "IN GND OUT", package: "TO-220" },
    seen("7805, bageera.in and alectronicx.blogspot.com"),
  ),
  type(
    "7812",
    "regulator",
    { volts: 12, amps: 1, pinOrder: "IN GND OUT", package: "TO-220" },
    seen(
      "L78xx data sheet, Doc 2143 rev 29, datasheet.directory 8b4fa4bf; pins as of the 7805, circflow.com",
    ),
  ),
  type(
    "7815",
    "regulator",
    { volts: 15, amps: 1, pinOrder: "IN GND OUT", package: "TO-220" },
    seen(
      "L78xx data sheet, Doc 2143 rev 29, datasheet.directory 8b4fa4bf; pins as of the 7805, circflow.com",
    ),
  ),
  type(
    "78L05",
    "regulator",
    { volts: 5, amps: 0.1, pinOrder: "OUT GND IN", package: "TO-92" },
    seen("L78L data sheet, DocID2145 rev 23, dokumen.tips; pins at circflow.com"),
  ),
  type(
    "431",
    "shuntref",
    { volts: 2.5, package: "TO-92" },
    seen(
      "TL431 data sheet SLVS543P, elecfans.com; makers differ in its pins (pcb-hero.com), so none are told",
    ),
  ),
];

const MAINS_PARTS: readonly CatalogueType[] = [
  ...[471, 561].flatMap((code) =>
    [7, 10, 14, 20].map((discMm) => {
      const volts = 10 * Math.floor(code / 10);
      const name = `${String(discMm).padStart(2, "0")}D${code}K`;
      const marked = { volts, discMm, tolerance: 0.1 };
      const acVolts = code === 471 ? 300 : 350;
      return discMm === 14
        ? type(name, "varistor", { ...marked, acVolts }, VARISTORS_14D)
        : type(name, "varistor", marked, VARISTOR_MARKING);
    }),
  ),
  ...[1, 2, 3.15, 4, 5, 6.3, 8, 10].flatMap((amps) =>
    (["F", "T"] as const).map((blow) =>
      type(
        `fuse 5x20 ${blow} ${amps}A ceramic`,
        "fuse",
        { amps, volts: 250, blow, breakingAmps: 1500, body: "ceramic", package: "5x20" },
        seen("IEC 60127: 1500 A high breaking, tnlab.org"),
      ),
    ),
  ),
  ...[1e-7, 2.2e-7, 3.3e-7, 4.7e-7, 1e-6].map((farads) =>
    type(
      `X2 ${Math.round(farads * 1e9)}n`,
      "capacitor",
      { type: "film", safety: "X2", farads, volts: 310 },
      seen("310 V of class X2: F1778 series, novapart.co F1778422M2FCB0"),
    ),
  ),
  ...[1e-9, 2.2e-9, 3.3e-9, 4.7e-9].map((farads) =>
    type(
      `Y2 ${Number((farads * 1e9).toPrecision(2))}n`,
      "capacitor",
      { type: "ceramic", safety: "Y2", farads, volts: 300 },
      seen("300 V of class Y2: title of a data sheet of ceramic discs, hobbydocbox.com 111227890"),
    ),
  ),
];

/** Every type that comes with the program; none of them lies in anybody's drawer. */
export const STANDARD_TYPES: readonly CatalogueType[] = [
  ...DIODES,
  ...BRIDGES,
  ...ZENERS,
  ...SMALL_TRANSISTORS,
  ...SUPPLY_PARTS,
  ...MAINS_PARTS,
];

export const STANDARD_LINES: readonly StockLine[] = STANDARD_TYPES.map(notInHouse);
