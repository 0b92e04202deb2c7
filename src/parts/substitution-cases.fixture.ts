/**
 * Substitution cases as a table. A line: the role; the candidate in words; what it has other than the original (`originals.fixture.ts`);
 * what the place has other than usual; the verdict (`if`: fits with conditions); every rule that objects; the dangerous custom named.
 */
import type { PartKind } from "../board/board.ts";
import { type KnownRole, likeOriginal, ORIGINALS, placeOf } from "./originals.fixture.ts";
import { readRating } from "./rating-text.ts";
import { RATINGS, type RatingName, type Ratings } from "./ratings.ts";
import type { Candidate } from "./rule.ts";
import type { Fits } from "./verdict.ts";
import type { Wanted } from "./wanted.ts";

const TABLE = `
# customs of the trade that are an exchange of one part for another
motor switch | a far bigger IGBT, 2.4 times the gate charge | amps 90A; hotAmps 60A; gateCoulombs 240nC |  | no | gate charge, not far bigger | a bigger IGBT is always better
motor switch | a 600 V 40 A high-speed IGBT that no data sheet rates for a short circuit | speed high-speed; shortCircuitSeconds 0 |  | no | short-circuit rated | any 600 V 40 A IGBT will do for boost and motor
boost switch | a 650 V 40 A motor IGBT, short-circuit rated and slow | speed motor |  | no | speed class of a boost switch | any 600 V 40 A IGBT will do for boost and motor
motor switch | the same IGBT without a diode | copack no |  | no | diode inside | an IGBT without a diode is fine, the body diode is there
resonant switch | a resonant IGBT without a diode | copack no |  | no | diode inside | an IGBT without a diode is fine, the body diode is there
motor switch | a MOSFET of the same volts and amps | kind mosfet |  | no | no MOSFET in a leg | a MOSFET for an IGBT, same volts
boost switch | a MOSFET in a boost stage | kind mosfet |  | if | MOSFET only after a check of the design | a MOSFET for an IGBT, same volts
boost switch | the same type beside one that lived |  | beside Q2 | if | a pair together | of a parallel pair change only the dead one
boost diode | the diode in its metal-tab version | tab live |  | if | tab | a metal tab is the same part, only cheaper
motor switch | the IGBT in its metal-tab version | tab live |  | if | tab | a metal tab is the same part, only cheaper
bridge | 25 A of a family whose 15 A part stands the same 300 A surge | amps 25A |  | if | surge current of a bridge | a bridge of 25 A for one of 15 A cures surge failures
bus capacitor | 450 V with half the ripple current | volts 450V; rippleAmps 1A |  | no | ripple current | a higher voltage is harmless, whatever the ESR
rail capacitor | a general-purpose 25 V type of six times the ESR | esrOhms 360m |  | no | ESR | a higher voltage is harmless, whatever the ESR
rail capacitor | 63 V for 25 V | volts 63V |  | if | not far above in voltage | a higher voltage is harmless, whatever the ESR
bus capacitor | 680 uF for 470 uF | farads 680uF |  | no | bus capacitance | a bigger bus capacitor is better
fuse | 12.5 A for 10 A | amps 12.5A |  | no | fuse current | a fuse one size up, or slow instead of quick
fuse | slow where quick was |  | blow F | no | quick or slow | a fuse one size up, or slow instead of quick
fuse | a wire across the blown fuse | kind link |  | no | no wire for a fuse | bridge the blown fuse to test
varistor | left out, its place bare or bridged | kind link |  | no | a varistor has to stand there | it runs without a varistor, so none is needed
inrush part | a wire where the inrush part was | kind link |  | no | no wire for an inrush part | a wire instead of the NTC
clamp diode | 1N4007 in the clamp of the off-line switch | type rectifier; recoverySeconds 30us |  | no | recovery time, fast stays fast | 1N4007 everywhere
secondary diode | 1N4007 for the Schottky of a 5 V rail | type rectifier; volts 1kV; amps 1A; recoverySeconds 30us; dropVolts 1V |  | no | rectified current, recovery time, fast stays fast, Schottky by Schottky, forward drop | 1N4007 everywhere
bootstrap diode | 1N4007 in the bootstrap | type rectifier; volts 1kV; recoverySeconds 30us |  | no | recovery time, fast stays fast | 1N4007 everywhere
# the rest, by role
X capacitor | X1 for X2 | safety X1 |  | fits
X capacitor | a plain 630 V film capacitor | safety unknown; volts 630V |  | no | class of an X capacitor | any film capacitor of the voltage will do
X capacitor | 220 V where 275 V was, a third of the capacitance, other pitch | volts 220V; farads 150nF; pitchMm 10 | | no | mains voltage of a safety capacitor, capacitance of an X capacitor, pin pitch
Y capacitor | X2 where Y2 belongs | safety X2 |  | no | class of a Y capacitor | any ceramic of the voltage will do
Y capacitor | 10 nF for 3.3 nF | farads 10nF |  | no | capacitance of a Y capacitor
boost diode | silicon carbide for ultrafast | type sic; recoverySeconds unknown |  | fits
boost diode | twice the recovery time | recoverySeconds 60ns |  | no | recovery time
boost diode | a 1 kV mains rectifier with a fast one's price | type rectifier; recoverySeconds 2us; volts 1kV | | no | recovery time, fast stays fast | 1N4007 everywhere
boost diode | silicon for silicon carbide | recoverySeconds 30ns | type sic | no | recovery time
boost switch | a high-speed type without the diode that the original has | copack no |  | no | diode where one was
boost switch | without a diode where none was | copack no | copack no | fits
boost switch | a 200 V MOSFET where one of 650 V was | kind mosfet; volts 200V | kind mosfet | no | blocking voltage
bridge | 800 V for 600 V | volts 800V |  | fits
bridge | 35 A with 400 A of surge and 660 A2s | amps 35A; surgeAmps 400A; meltingAmps2Seconds 660 |  | fits
bridge | 400 V for 600 V | volts 400V |  | no | reverse voltage of a diode
bridge | plus at the other end | pinOrder - ~ ~ + |  | no | pin order
bridge | 10 A for 15 A, with less I2t than the fuse lets through | amps 10A; surgeAmps 200A; meltingAmps2Seconds 166 | | no | rectified current, surge current of a bridge, I2t
bus capacitor | 450 V for 400 V, ripple as good | volts 450V |  | fits
bus capacitor | 390 uF for 470 uF | farads 390uF |  | no | bus capacitance
bus capacitor | an 85 degC type | degC 85 |  | no | 105 degC
bus capacitor | 5 mm taller, legs at 7.5 mm | heightMm 45; pitchMm 7.5 |  | if | height, pin pitch
bus capacitor | one new type in a bank of three |  | set C6 C7 | if | one type in the bank
bus capacitor | a film capacitor for an electrolytic | type film | | no | capacitor type
ceramic | 25 V for 50 V | volts 25V |  | no | voltage of a dry capacitor
bus capacitor | 400 V for 450 V | volts 400V | volts 450V | no | capacitor voltage
secondary diode | 40 V where 60 V was | volts 40V | volts 60V | no | reverse voltage
varistor | one for 275 V where one for 300 V was | acVolts 275V | acVolts 300V | no | continuous AC voltage
ceramic | 10 nF for 100 nF | farads 10nF | | no | ceramic capacitance
chip | another type | | named another chip | if | same chip
controller | the same chip, empty | program none; named the original |  | no | program
controller | one from a donor of the same board number | pulled |  | if | pulled
controller | another chip with the right program | | named another chip | no | identical chip
film capacitor | 100 nF for 220 nF | farads 100nF | | no | film capacitance
fuse | glass of low breaking capacity on the mains | body glass; breakingAmps 100A |  | no | breaking capacity, ceramic on the mains
fuse | 125 V of the long size | volts 125V; package 6.3x32 | | no | fuse voltage, fuse size
fuse resistor | a plain film resistor of 4.7 ohm 1 W | fusible no |  | no | fusible | any resistor of the value will do
fuse resistor | 47 ohm of a quarter watt | ohms 47; watts 250m | | no | resistor value, power of a resistor
gate clamp | a 17 V zener for 18 V | volts 17V |  | fits
gate clamp | 24 V for 18 V | volts 24V |  | no | clamp voltage
high-voltage resistor | one 1.41 Mohm chip for the three of a chain | ohms 1.41M; volts 200V | ohms 1.41M; volts 600V | no | voltage of a resistor | one resistor of the sum will do
inrush part | an NTC for a PTC | kind ntc |  | no | kind
inrush part | 10 ohm for 47 ohm | ohms 10 |  | no | cold resistance
inrush part | a smaller PTC: half the current and energy | amps 500mA; joules 40 | | no | current of an inrush part, energy of an inrush part
mains diode | 1N4007 where 1N4007 belongs, in the feed of a small supply | recoverySeconds 30us |  | fits
mains diode | 1N4001 for 1N4007 on the mains | volts 50V | | no | reverse voltage of a diode
mains diode | half the surge current | surgeAmps 15A | | no | surge current of a mains diode
mains diode | a surface-mount case for axial leads | package SMA | | if | package
motor switch | the same type again |  |  | fits
motor switch | 650 V, half as much current again, gate charge 1.2 times | volts 650V; amps 60A; hotAmps 30A; gateCoulombs 120nC |  | fits
motor switch | 500 V for 600 V | volts 500V |  | no | blocking voltage
motor switch | 40 A at 25 degC but 15 A at 100 degC | hotAmps 15A |  | no | current when warm
motor switch | one whose short-circuit time nobody has read yet | shortCircuitSeconds unknown |  | if | short-circuit rated
motor switch | a leg of its own type beside five others of the old |  | set Q2 Q3 Q4 Q5 Q6 | if | one type in all legs
motor switch | gate and emitter crossed | pinOrder E C G |  | no | pin order
motor switch | TO-3P for TO-247 | package TO-3P |  | if | package
motor switch | a third more saturation voltage | dropVolts 2.5V |  | if | saturation
motor switch | the same type, pulled | pulled |  | if | pulled
off-line switch | 650 V for 800 V | volts 650V |  | no | blocking voltage
off-line switch | twice the on-resistance | ohmsOn 7 |  | no | on-resistance
off-line switch | a switcher chip of the next family | kind switcher; family B; watts 15W; hertz 65kHz | kind switcher; family A; watts 15W; hertz 65kHz | no | same family of switcher
off-line switch | the next bigger sister of a switcher chip | kind switcher; family A; watts 20W; hertz 65kHz | kind switcher; family A; watts 15W; hertz 65kHz | if | power of a switcher
off-line switch | a sister of double frequency | kind switcher; family A; watts 15W; hertz 130kHz | kind switcher; family A; watts 15W; hertz 65kHz | no | frequency of a switcher
off-line switch | 1 A for 3 A | amps 1A | | no | drain current
off-line switch | three times the gate charge | gateCoulombs 60nC | | if | gate charge of an off-line switch
off-line switch | the smaller sister of a switcher chip | kind switcher; family A; watts 10W; hertz 65kHz | kind switcher; family A; watts 15W; hertz 65kHz | no | power of a switcher
off-line switch | metal tab for a full pack | tab live; package TO-220 | | if | tab, package | a metal tab is the same part, only cheaper
optocoupler | a feedback type where a gate driver was |  | use drive | no | use of an optocoupler
optocoupler | rank 130 to 260 % for 80 to 160 % | transferLow 130%; transferHigh 260% |  | if | highest transfer ratio
optocoupler | rank 40 to 80 % | transferLow 40%; transferHigh 80% |  | no | lowest transfer ratio
optocoupler | 20 us for 4 us, 2500 V for 5000 V, SMD | recoverySeconds 20us; isolationVolts 2.5kV; package SMD-4 | | no | speed of an optocoupler, isolation, package
other | any choke of the value | | named another choke | if | no table
power module | the same module again |  |  | fits
power module | inputs of the other sense | logic low |  | no | input logic
power module | another pin drawing | pinMap DIP27-B |  | no | pin map
power module | a module without bootstrap diodes | bootDiode no |  | no | bootstrap diodes
power module | 30 A for 20 A behind the same shunt | amps 30A |  | if | current of a module
power module | 15 A for 20 A | amps 15A |  | no | current of a module
power module | shunts inside where they were outside, emitters joined | shunt inside; openEmitters no |  | no | shunt inside or outside, open emitters
power module | another temperature curve and 2 mm higher | sensor 85k-4150; heightMm 6 |  | if | temperature curve, height on the heatsink
power module | one that trips at 0.65 V | tripVolts 650mV | | if | over-current threshold
rail capacitor | 680 uF 35 V of low ESR | farads 680uF; volts 35V |  | fits
rail capacitor | 1000 uF for 470 uF | farads 1mF |  | if | rail capacitance
regulator | 5 V 1.5 A for 1 A | amps 1.5A |  | fits
regulator | IN and GND the other way round | pinOrder GND IN OUT |  | no | tab and pins
regulator | 3.3 V 0.1 A for 5 V 1 A | volts 3.3V; amps 100mA | | no | regulated voltage, current of a regulator
relay | a 24 V coil | coilVolts 24V; coilOhms 1.44k |  | no | coil voltage
relay | a coil of twice the current | coilOhms 180 |  | no | coil current
relay | 10 A contacts, coil on the outer legs | amps 10A; pinMap five legs | | no | contact current, pins of a relay
resistor | 10 kohm for 1 kohm | ohms 10k | | no | resistor value
resonant capacitor | 330 nF for 270 nF | farads 330nF |  | no | resonant capacitance
resonant capacitor | half the current | rippleAmps 6A | | no | current of a resonant capacitor
resonant switch | a 1350 V motor type in a hob | speed motor |  | no | resonant type
resonant switch | 1200 V for 1350 V | volts 1.2kV |  | no | blocking voltage
secondary diode | an ultrafast diode for a Schottky | type fast; recoverySeconds 25ns; dropVolts 950mV; volts 200V |  | no | recovery time, Schottky by Schottky, forward drop
secondary diode | a 60 V Schottky for 40 V | volts 60V |  | fits
shunt | 22 mohm for 20 mohm | ohms 22m |  | no | shunt value
shunt | the value with eight times the drift | kelvinDrift 400 |  | if | drift of a shunt
shunt | two legs where four were | fourTerminal no | fourTerminal yes | no | four terminals
signal diode | a 2 us diode in the feed of a supply pin | recoverySeconds 2us | | if | recovery of a signal diode
supply pin capacitor | 100 uF at the supply pin of the switcher | farads 100uF |  | no | capacitance at a supply pin
transistor | PNP for NPN | polarity pnp |  | no | polarity
transistor | the same case with crossed pins | pinOrder E C B |  | no | pin order of a transistor
transistor | 20 V 0.1 A in a totem pole | volts 20V; amps 100mA | | no | collector voltage, collector current
varistor | a disc of 20 mm for 14 mm | discMm 20 |  | fits
varistor | 10 mm for 14 mm | discMm 10 |  | no | disc of a varistor
varistor | 560 V for 470 V | volts 560V |  | no | varistor voltage
varistor | without the thermal cut-out | cutout no |  | no | thermal cut-out
shunt | a wire where the shunt was | kind link | | no | no wire
zener | 5.6 V for 5.1 V | volts 5.6V | | no | zener voltage
zener | a quarter of the power | watts 125m | | no | zener power
`;

export interface SubstitutionCase {
  readonly role: KnownRole;
  readonly words: string;
  readonly wanted: Wanted;
  readonly candidate: Candidate;
  readonly fits: Fits;
  readonly rules: readonly string[];
  readonly custom: string | null;
}

interface Changes {
  readonly ratings: Readonly<Record<string, unknown>>;
  readonly words: ReadonlyMap<string, string>;
}

/** `amps 90A; kind mosfet; pulled`: ratings by their names, everything else as words. `unknown` takes a rating away. */
function changesOf(cell: string): Changes {
  const ratings: Record<string, unknown> = {};
  const words = new Map<string, string>();
  for (const change of cell.split(";").map((one) => one.trim())) {
    const [key = "", ...rest] = change.split(" ");
    const text = rest.join(" ");
    if (!RATINGS.has(key as RatingName)) {
      words.set(key, text);
      continue;
    }
    const read = text === "unknown" ? null : readRating(text, key as RatingName);
    if (read !== null && !read.ok) throw new Error(`${change}: ${read.problem}`);
    ratings[key] = read === null ? undefined : read.value;
  }
  return { ratings, words };
}

const known = (ratings: Readonly<Record<string, unknown>>): Ratings =>
  Object.fromEntries(Object.entries(ratings).filter(([, value]) => value !== undefined));

function caseOf(line: string): SubstitutionCase {
  const [role = "", words = "", is = "", was = "", fits = "", rules = "", custom] = line
    .split("|")
    .map((cell) => cell.trim());
  if (!(role in ORIGINALS)) throw new Error(`no original of the role ${role}`);
  const at = role as KnownRole;
  const [candidate, place] = [changesOf(is), changesOf(was)];
  const kind = (changes: Changes) => changes.words.get("kind") as PartKind | undefined;
  const type = likeOriginal(at, {}, kind(candidate));
  const changed = Object.keys(candidate.ratings).length > 0 || kind(candidate) !== undefined;
  const usual = placeOf(at);
  const list = (key: string) => place.words.get(key)?.split(" ") ?? [];
  const alike = list("set");
  return {
    role: at,
    words,
    wanted: {
      ...usual,
      kind: kind(place) ?? usual.kind,
      name: place.words.get("named") ?? (alike.length > 0 ? "the old type" : usual.name),
      ratings: known({ ...usual.ratings, ...place.ratings }),
      parallel: list("beside"),
      alike,
    },
    candidate: {
      type: {
        ...type,
        name: candidate.words.get("named") ?? (changed ? "another type" : type.name),
        ratings: known({ ...type.ratings, ...candidate.ratings }),
      },
      used: candidate.words.has("pulled"),
    },
    fits: fits === "if" ? "fits with conditions" : (fits as Fits),
    rules: rules === "" ? [] : rules.split(",").map((rule) => rule.trim()),
    custom: custom ?? null,
  };
}

export const CASES: readonly SubstitutionCase[] = TABLE.split("\n")
  .filter((line) => line.trim() !== "" && !line.startsWith("#"))
  .map(caseOf);
