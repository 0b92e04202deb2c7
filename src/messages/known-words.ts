/**
 * What the program itself wrote into files: names of boards, what a net is called, where a place is found, what a part is for, where
 * a pulled part lies. A file holds plain English; here it is said again, so that it can be told. What a person wrote stays as it is.
 */
import { plain, said } from "./said.ts";

const BOARDS: readonly string[] = [
  said`greenhouse fan drive, 1.5 kW`,
  said`outdoor unit inverter with boost, 1.8 kW`,
  said`washing machine drive, 700 W`,
  said`small frequency drive, 1.1 kW, single-phase mains`,
  said`small frequency drive, 2.2 kW, three-phase mains`,
  said`single-switch induction hob, one zone, 1.8 kW`,
  said`Greenhouse ventilation fan drive, 1.5 kW, six discrete switches`,
  said`Outdoor unit inverter with single-switch boost, 1.8 kW, power module`,
  said`Washing machine drive without boost, 700 W, power module, door lock, valves and heater`,
  said`Small frequency drive, 1.1 kW, single-phase mains, charge resistor and brake chopper`,
  said`Small frequency drive, 2.2 kW, three-phase mains, charge resistor and brake chopper`,
  said`Single-switch induction hob, one zone, 1.8 kW`,
  said`traced board`,
];

const NETS: readonly string[] = [
  said`protective earth`,
  said`line behind the fuse`,
  said`line behind the inrush PTC`,
  said`line behind the inrush NTC`,
  said`line behind the door lock`,
  said`DC bus +`,
  said`DC bus -`,
  said`film bus +, at the coil`,
  said`bus -`,
  said`middle of the bus capacitors`,
  said`bridge +`,
  said`bridge -`,
  said`bridge + before the charge resistor`,
  said`switching point between reactor and boost diode`,
  said`gate of the boost switch`,
  said`gate of the brake switch`,
  said`gate of the switch`,
  said`collector of the switch, at the coil`,
  said`bases of the gate drive's pair`,
  said`drain of the off-line switch`,
  said`supply of the off-line switch`,
  said`feed of the small supply`,
  said`feed of the small supply before its fuse resistor`,
  said`speed input`,
  said`signal wire to the other unit`,
  said`output lock at its plug`,
  said`output pump at its plug`,
  said`output fill at its plug`,
  said`output rinse at its plug`,
  said`output heater at its plug`,
  said`tacho at its plug`,
  said`water level signal at its plug`,
  said`fan plug, the wire that is switched`,
  said`brake terminal`,
  said`10 V terminal for a potentiometer`,
  said`control terminal of the speed command`,
  said`relay's contact at the terminals`,
  said`0 V of the control terminals`,
  said`24 V of the control terminals`,
  said`rectified line current`,
  said`comparator input from the collector`,
  said`comparator input from the bus`,
  said`comparator input that watches the collector's peak`,
  said`reference of the comparators`,
];

const PLACES: readonly string[] = [
  said`left screw of the mains terminal`,
  said`right screw of the mains terminal`,
  said`left blade of the mains plug socket`,
  said`right blade of the mains plug socket`,
  said`plus pin of either large capacitor`,
  said`minus pin of either large capacitor`,
  said`plus pin of any of the three large capacitors`,
  said`minus pin of any of the three large capacitors`,
  said`plus pin of the one large capacitor`,
  said`minus pin of the one large capacitor, the striped side`,
  said`plus pin of a large capacitor, the one away from bus minus`,
  said`minus pin of a large capacitor, the striped side`,
  said`plus pin of the large capacitor nearer the bridge`,
  said`minus pin of the large capacitor farther from the bridge`,
  said`where the two large capacitors meet`,
  said`plus pin of the capacitor beside the small transformer`,
  said`plus pin of the largest capacitor beside the small transformer`,
  said`plus pin of the tall thin capacitor beside the small transformer`,
  said`plus pin of the capacitor beside the module's control pins`,
  said`any small ceramic beside the largest chip`,
  said`drain leg of the chip beside the small transformer`,
  said`plus leg of the bridge, the chamfered corner`,
  said`minus leg of the bridge`,
  said`reactor spade on the boost diode's side`,
  said`output leg of the first regulator`,
  said`output leg of the small regulator`,
  said`output leg of the three-legged regulator`,
  said`leg of the round disc that is nearer the bridge`,
  said`leg of the cement resistor that is nearer the bridge`,
  said`first blade of the motor plug`,
  said`second blade of the motor plug`,
  said`third blade of the motor plug`,
  said`common blade of the heater relay`,
  said`blade of the heater plug`,
  said`screw of the brake terminal`,
  said`screw 24 V of the control terminals`,
  said`screw 10 V of the control terminals`,
  said`screw COM of the control terminals`,
  said`coil screw beside the large box capacitor`,
  said`coil screw on the side of the heatsink`,
  said`first leg of the transistor on the heatsink`,
  said`pulled parts`,
];

const ROLES: readonly string[] = [
  said`shunt`,
  said`half-bridge driver`,
  said`gate driver`,
  said`fuse resistor`,
  said`charge resistor`,
  said`balancing resistor`,
  said`boost switch`,
  said`boost diode`,
  said`bypass diode`,
  said`brake switch`,
  said`brake diode`,
  said`brake resistor on its terminals`,
  said`resonant switch`,
  said`resonant capacitor`,
  said`work coil`,
  said`memory`,
  said`darlington array`,
  said`quad comparator`,
  said`isolating amplifier`,
  said`current transformer`,
  said`triac optocoupler`,
  said`valve stepper coil`,
  said`door lock`,
  said`drain pump coil`,
  said`fill valve coil`,
  said`softener valve coil`,
  said`heating element`,
  said`tacho coil`,
  said`heatsink fan`,
  said`key and display board`,
  said`controller on its own board`,
];

/** What names a phase, a terminal, a number or volts; the own boards' names have two of them. */
const NAMED: readonly ((name: string, other: string) => string)[] = [
  (name) => said`mains ${name} at the terminal`,
  (name) => said`mains terminal ${name}`,
  (name) => said`line ${name} behind its fuse`,
  (name) => said`line ${name} at the bridge`,
  (name) => said`phase ${name}`,
  (name) => said`gate of the upper switch of phase ${name}`,
  (name) => said`gate of the lower switch of phase ${name}`,
  (name) => said`bootstrap of phase ${name}`,
  (name) => said`lower end of phase ${name} at the module`,
  (name) => said`module's input for the upper switch of phase ${name}`,
  (name) => said`module's input for the lower switch of phase ${name}`,
  (name) => said`switched output ${name}`,
  (name) => said`control terminal ${name}`,
  (name) => said`motor terminal ${name}`,
  (name) => said`compressor terminal ${name}`,
  (name) => said`screw ${name} of the power terminals`,
  (name) => said`${name} on its plug`,
  (name) => said`${name}, at any capacitor on it`,
  (name) => said`${name} from the other board`,
  (volts, rails) => said`own board, ${volts}, one phase, no boost, power module, ${rails}`,
  (volts, rails) => said`own board, ${volts}, one phase, no boost, single switches, ${rails}`,
  (volts, rails) => said`own board, ${volts}, one phase, boost, power module, ${rails}`,
  (volts, rails) => said`own board, ${volts}, one phase, boost, single switches, ${rails}`,
  (volts, rails) => said`own board, ${volts}, three phases, no boost, power module, ${rails}`,
  (volts, rails) => said`own board, ${volts}, three phases, no boost, single switches, ${rails}`,
];

/** `U`, `L1`, `15 V`, `15 V, 5 V` or `15, 12, 5, 3.3 V`. */
const NAME = String.raw`(\S+?(?: V)?(?:, \S+?(?: V)?)*)`;
const SEAM = "\u0000";

const KNOWN = new Map([...BOARDS, ...NETS, ...PLACES, ...ROLES].map((text) => [plain(text), text]));
const PATTERNS = NAMED.map((make) => {
  const pieces = plain(make(SEAM, SEAM)).split(SEAM);
  const literal = pieces.map((piece) => piece.replace(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`));
  return { make, pattern: new RegExp(`^${literal.join(NAME)}$`) };
});

/** A text out of a file, said if the program wrote it there; a person's own words as they stand. */
export function knownWords(text: string): string {
  const kept = KNOWN.get(text);
  if (kept !== undefined) return kept;
  if (!text.includes(" ")) return text;
  for (const { make, pattern } of PATTERNS) {
    const [, name, other = ""] = pattern.exec(text) ?? [];
    if (name !== undefined) return make(name, other);
  }
  return text;
}
