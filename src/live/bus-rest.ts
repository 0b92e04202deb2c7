/** The bus after power went off: the small supplies draw it down as long as they run, the bleeders do the rest. */
import { bledVolts, drawnVolts } from "../board/stored-charge.ts";
import type { Found } from "./found.ts";
import { meanBetween } from "./front.ts";
import { SUPPLY_MODEL } from "./live-models.ts";

/** Volts of the bus so many seconds after power went off; null where there is no bus or none of it is fed. */
export function busAfter({ view, front, supplies }: Found, seconds: number): number | null {
  const { bus } = view.roles;
  const { zero } = view.board;
  if (bus === null || front === null) return null;
  const volts = meanBetween(front.path, front.cycle, zero, bus.plus, bus.minus);
  if (volts === null) return null;
  const number = (net: string) => (net === zero ? -1 : front.path.nets.get(net));
  const [plus, minus] = [number(bus.plus), number(bus.minus)];
  const across = (one: { readonly from: number; readonly to: number }) =>
    (one.from === plus && one.to === minus) || (one.from === minus && one.to === plus);
  const { capacitors, resistors } = front.path.circuit;
  const farads = capacitors.filter(across).reduce((sum, one) => sum + one.farads, 0);
  const siemens = resistors.filter(across).reduce((sum, one) => sum + 1 / one.ohms, 0);
  if (farads <= 0) return 0;
  const watts = supplies.reduce((sum, supply) => sum + supply.watts, 0);
  const drawn =
    watts > 0 ? drawnVolts(volts, watts, farads, SUPPLY_MODEL.stopVolts, seconds) : { volts, seconds: 0 };
  return siemens > 0 ? bledVolts(drawn.volts, 1 / siemens, farads, seconds - drawn.seconds) : drawn.volts;
}
