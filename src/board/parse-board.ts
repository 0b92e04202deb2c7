import { said } from "../messages/said.ts";
import { Fields, found, NAME, Problems, readNumber } from "../units/fields.ts";
import { deepFreeze, FrozenMap } from "../units/frozen.ts";
import { quoted, suggestion } from "../units/nearest.ts";
import type { Parsed } from "../units/outcome.ts";
import type { Board, Part, Rail, Supply, TestPoint } from "./board.ts";
import { readPart } from "./parse-part.ts";
import { readCountedLogs, readReferences } from "./parse-references.ts";

export const BOARD_FORMAT = "faultwright-board/1";
/** A board of more parts than this is no repair job; the bound keeps a hostile file from costing minutes. */
export const MOST_PARTS = 2000;
/** Rail tolerance where a board gives none: logic supplies are made to 5 % (common practice). */
const RAIL_TOLERANCE = 0.05;
const BOARD_FIELDS = [
  "format",
  "name",
  "identity",
  "family",
  "supply",
  "zero",
  "nets",
  "parts",
  "rails",
  "points",
  "references",
  "referencesFrom",
] as const;

type Nets = ReadonlyMap<string, string | null>;

function readParts(board: Fields, problems: Problems): readonly Part[] {
  const parts = board.object("parts");
  if (parts.keys.length > MOST_PARTS)
    board.complain("parts", said`${parts.keys.length} parts are too many; the most is ${MOST_PARTS}`);
  if (problems.first !== null) return [];
  return parts.keys.map((ref) => readPart(parts, ref, problems));
}

/** The nets the file labels, then those that only pins name, in file order. */
function readNets(board: Fields, parts: readonly Part[]): Nets {
  const read = new Map<string, string | null>();
  if (board.has("nets")) {
    const nets = board.object("nets");
    for (const name of nets.keys) {
      if (!NAME.test(name))
        nets.complain(name, said`${quoted(name)} is not a net name (letters, digits, _ + - only)`);
      const net = nets.object(name);
      net.only(["label"], said`a net`);
      read.set(name, net.text("label") ?? null);
    }
  }
  for (const part of parts) for (const net of part.pins.values()) if (!read.has(net)) read.set(net, null);
  return new FrozenMap(read);
}

function knownNet(fields: Fields, key: string, nets: Nets): string {
  const net = fields.text(key) ?? "";
  if (!nets.has(net))
    fields.complain(key, `${said`there is no net ${quoted(net)}`}${suggestion(net, [...nets.keys()])}`);
  return net;
}

function readSupply(board: Fields, nets: Nets, problems: Problems): Supply {
  const supply = board.object("supply");
  supply.only(["kind", "volts", "hz", "at"], said`the supply`);
  supply.require("kind", "volts", "at");
  const kind = supply.word("kind", ["ac", "dc"] as const) ?? "ac";
  const hz = supply.number("hz", { above: 0, most: 1000 }) ?? null;
  if (kind === "dc" && hz !== null) supply.complain("hz", said`a dc supply has none; leave it out`);
  const at = supply.list("at").map((place, index) => {
    const path = `${supply.at("at")}[${index}]`;
    if (typeof place !== "string") problems.add(path, said`expected a net, found ${found(place)}`);
    else if (!nets.has(place))
      problems.add(path, `${said`there is no net ${quoted(place)}`}${suggestion(place, [...nets.keys()])}`);
    return String(place);
  });
  const right = kind === "dc" ? at.length === 2 : at.length === 2 || at.length === 3;
  if (!right) supply.complain("at", said`names ${at.length} nets; two are needed, or three for three phases`);
  if (new Set(at).size < at.length) supply.complain("at", said`names one net twice`);
  return { kind, volts: supply.number("volts", { above: 0 }) ?? 0, hz, at };
}

function readRails(board: Fields, nets: Nets, refs: readonly string[], zero: string): readonly Rail[] {
  if (!board.has("rails")) return [];
  const rails = board.object("rails");
  return rails.keys.map((name) => {
    if (!NAME.test(name))
      rails.complain(name, said`${quoted(name)} is not a rail name (letters, digits, _ + - only)`);
    const rail = rails.object(name);
    rail.only(["net", "volts", "tolerance", "from", "against"], said`a rail`);
    rail.require("net", "volts");
    const volts = rail.number("volts") ?? 1;
    if (volts === 0) rail.complain("volts", said`a rail of 0 V is no rail`);
    const from = rail.text("from") ?? null;
    if (from !== null && !refs.includes(from))
      rail.complain("from", `${said`there is no part ${quoted(from)}`}${suggestion(from, refs)}`);
    const net = knownNet(rail, "net", nets);
    const against = rail.has("against") ? knownNet(rail, "against", nets) : null;
    if (net === (against ?? zero))
      rail.complain("net", said`${quoted(net)} is the net this rail is measured against`);
    return {
      name,
      net,
      volts,
      tolerance: rail.number("tolerance", { least: 0, below: 1 }) ?? RAIL_TOLERANCE,
      from,
      against,
    };
  });
}

function readPoints(board: Fields, nets: Nets, problems: Problems): readonly TestPoint[] {
  if (!board.has("points")) return [];
  const points = board.object("points");
  return points.keys.map((name) => {
    if (!NAME.test(name))
      points.complain(name, said`${quoted(name)} is not a point name (letters, digits, _ + - only)`);
    const point = points.object(name);
    point.only(["net", "at", "xy"], said`a point`);
    point.require("net");
    return {
      name,
      net: knownNet(point, "net", nets),
      at: point.text("at") ?? null,
      xy: point.has("xy") ? readXy(point, problems) : null,
    };
  });
}

function readXy(point: Fields, problems: Problems): readonly [number, number] {
  const xy = point.list("xy");
  if (xy.length !== 2) point.complain("xy", said`expected two fractions of the picture, found ${xy.length}`);
  const bounds = { least: 0, most: 1 };
  return [
    readNumber(problems, `${point.at("xy")}[0]`, xy[0], bounds),
    readNumber(problems, `${point.at("xy")}[1]`, xy[1], bounds),
  ];
}

/**
 * A board file's value (already JSON) as a board, deep-frozen. A problem is one line: the field's path, what is wrong there and
 * what would be right.
 */
export function parseBoard(input: unknown): Parsed<Board> {
  const problems = new Problems();
  const file = new Fields(problems, "", input);
  if (problems.first === null && file.raw("format") !== BOARD_FORMAT)
    file.complain("format", said`expected ${quoted(BOARD_FORMAT)}, found ${found(file.raw("format"))}`);
  file.only(BOARD_FIELDS, said`a board`);
  file.require("name", "family", "supply", "zero", "parts");
  if (problems.first !== null) return { ok: false, problem: problems.first };
  const parts = readParts(file, problems);
  const nets = readNets(file, parts);
  if (problems.first !== null) return { ok: false, problem: problems.first };
  const refs = parts.map((part) => part.ref);
  const zero = knownNet(file, "zero", nets);
  const references = readReferences(file, nets, parts, problems);
  const counted = readCountedLogs(file, problems);
  const board: Board = {
    name: file.text("name") ?? "",
    ...(file.has("identity") ? { identity: file.text("identity") ?? "" } : {}),
    family: file.text("family") ?? "",
    supply: readSupply(file, nets, problems),
    zero,
    nets,
    parts: new FrozenMap(parts.map((part) => [part.ref, part])),
    rails: readRails(file, nets, refs, zero),
    points: readPoints(file, nets, problems),
    ...(references === undefined ? {} : { references }),
    ...(counted === undefined ? {} : { referencesFrom: counted }),
  };
  return problems.outcome(deepFreeze(board));
}
