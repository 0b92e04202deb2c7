/** Numbers the nets of a circuit so that eliminating them as they come fills in little: no table of the order stands in the way. */
import { eliminationOrder } from "../numeric/elimination-plan.ts";
import { type Ends, type Netlist, patternPairs } from "./netlist.ts";

export interface Numbered {
  readonly netlist: Netlist;
  /** new number of each net; the reference stays -1 */
  numberOf(net: number): number;
}

/** The same circuit with its nets in elimination order; branches keep their indexes. */
export function inEliminationOrder(netlist: Netlist): Numbered {
  const order = eliminationOrder(netlist.nets, patternPairs(netlist));
  const number = new Int32Array(netlist.nets);
  order.forEach((net, k) => {
    number[net] = k;
  });
  const numberOf = (net: number) => (net < 0 ? -1 : number[net]);
  const ends = ({ from, to }: Ends) => ({ from: from.map(numberOf), to: to.map(numberOf) });
  const { junctions, bjts } = netlist;
  return {
    numberOf,
    netlist: {
      ...netlist,
      names: Array.from(order, (net) => netlist.names[net]),
      resistors: ends(netlist.resistors),
      junctions: { ...junctions, ...ends(junctions) },
      capacitors: ends(netlist.capacitors),
      bjts: {
        ...bjts,
        base: bjts.base.map(numberOf),
        collector: bjts.collector.map(numberOf),
        emitter: bjts.emitter.map(numberOf),
      },
    },
  };
}
