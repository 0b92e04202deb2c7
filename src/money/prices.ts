/**
 * What a new part costs where the board file gives no price. The trade's relation of part prices to the price of a new board
 * (new board = 100), all from memory, to be replaced by the shop's own: module 10-30, discrete IGBT 1.5-5, boost diode 1-3,
 * bridge 1-3, set of bus capacitors 5-15, parts of the small supply 2-5 together, driver chip or optocoupler 0.3-2, a donor board for a
 * controller 20-60. Small parts cost next to nothing and are bought in strips.
 */
import type { Part, PartKind } from "../board/board.ts";
import { BUS_CAPACITOR_VOLTS } from "../board/bus.ts";
import { kindOf } from "../board/kinds.ts";
import { DEFAULT_TERMS, type Terms } from "./terms.ts";

/** Per cent of the price of a new board. From memory, see above. */
const SHARE: Readonly<Record<PartKind, number>> = {
  fuse: 0.3,
  link: 0.1,
  resistor: 0.05,
  ntc: 0.5,
  ptc: 0.8,
  varistor: 0.3,
  capacitor: 0.1,
  inductor: 1.5,
  choke: 2,
  transformer: 3,
  relay: 1.5,
  diode: 0.3,
  zener: 0.1,
  led: 0.1,
  bridge: 1.5,
  bjt: 0.1,
  mosfet: 1.5,
  igbt: 2.5,
  thyristor: 1,
  triac: 0.6,
  module: 17,
  opto: 0.3,
  regulator: 0.3,
  switcher: 1.2,
  shuntref: 0.15,
  controller: 40,
  ic: 0.8,
  motor: 30,
};
/** A diode that carries the board's power: 1-3 of a new board's hundred. */
const POWER_DIODE = 1;
const POWER_DIODE_AMPS = 5;
/** One of two to four bus capacitors whose set is 5-15. */
const BUS_CAPACITOR = 3;
const BUS_CAPACITOR_FARADS = 47e-6;
/** Film capacitors for mains and bus. */
const FILM_CAPACITOR = 0.5;

function shareOf(part: Part): number {
  const { amps, farads, volts, type } = part.value;
  if (part.kind === "diode" && (amps ?? 0) >= POWER_DIODE_AMPS) return POWER_DIODE;
  if (part.kind === "capacitor") {
    if ((volts ?? 0) >= BUS_CAPACITOR_VOLTS && (farads ?? 0) >= BUS_CAPACITOR_FARADS) return BUS_CAPACITOR;
    if (type === "film") return FILM_CAPACITOR;
  }
  return SHARE[part.kind];
}

/** The price of one new part in the job's currency: the board's, else the kind's share of a new board, to the cent. */
export function partPrice(part: Part, newBoardPrice: number = DEFAULT_TERMS.newBoardPrice): number {
  return part.price ?? Math.round(shareOf(part) * newBoardPrice) / 100;
}

/** The price of the part that would be fitted there: of the one at hand where its price is known, else of a new one. */
export function fittedPrice(part: Part, terms: Terms): number {
  return terms.atHand.get(part.ref)?.price ?? partPrice(part, terms.newBoardPrice);
}

/** What waiting for the part costs: nothing where one lies at hand. */
export function waitingMoney(part: Part, terms: Terms): number {
  return terms.atHand.has(part.ref) ? 0 : terms.waitCost;
}

/**
 * What one costs once the few at hand are used up: the next that lies there, else one that is bought, waiting included; null where there is
 * none. How many of the next are wanted by other places is not counted: two short places at once are rare.
 */
export function nextMoney(part: Part, terms: Terms): number | null {
  const usual = partPrice(part, terms.newBoardPrice);
  const bought = canBeBought(part) ? usual + terms.waitCost : null;
  const next = terms.atHand.get(part.ref)?.next;
  if (next === undefined || next.count === 0) return bought;
  const lying = next.price ?? usual;
  return bought === null ? lying : Math.min(lying, bought);
}

function canBeBought(part: Part): boolean {
  return part.obtainable ?? kindOf(part.kind).obtainable;
}

/** Can one be had: it lies at hand, or can be bought, as the board says or as is usual for its kind (a programmed controller cannot). */
export function isObtainable(part: Part, terms: Terms = DEFAULT_TERMS): boolean {
  return terms.atHand.has(part.ref) || canBeBought(part);
}
