/** What a traced board runs on, and between which of its nets. */
import { said } from "../../messages/said.ts";
import { say } from "../say.ts";

interface Typed {
  readonly kind: "ac" | "ac3" | "dc";
  readonly volts: string;
  readonly hz: string;
  readonly at: readonly string[];
  /** the net that rails are measured against; empty: not chosen */
  readonly zero: string;
}
export type SupplyTyped = Typed;

export const UNTYPED: SupplyTyped = { kind: "ac", volts: "230", hz: "50", at: ["", ""], zero: "" };

const KINDS: readonly {
  readonly kind: Typed["kind"];
  readonly words: string;
  readonly places: readonly string[];
}[] = [
  { kind: "ac", words: said`Mains, one phase`, places: [said`Live comes in on`, said`Neutral comes in on`] },
  {
    kind: "ac3",
    words: said`Mains, three phases`,
    places: [said`L1 comes in on`, said`L2 comes in on`, said`L3 comes in on`],
  },
  { kind: "dc", words: said`Direct voltage`, places: [said`Plus comes in on`, said`Minus comes in on`] },
];

const placesOf = (kind: Typed["kind"]) => KINDS.find((one) => one.kind === kind)?.places ?? [];

/** The board file's `supply`; null while something of it is not said. */
export function supplyOf({ kind, volts, hz, at }: SupplyTyped): Readonly<Record<string, unknown>> | null {
  const [v, f] = [volts, hz].map((text) => Number(text.replace(",", ".")));
  const whole =
    at.length === placesOf(kind).length && at.every((net) => net !== "") && new Set(at).size === at.length;
  if (!whole || v === undefined || f === undefined || !(v > 0) || (kind !== "dc" && !(f > 0))) return null;
  return kind === "dc" ? { kind, volts: v, at } : { kind: "ac", volts: v, hz: f, at };
}

interface Props {
  readonly nets: readonly string[];
  readonly typed: SupplyTyped;
  onTyped(typed: SupplyTyped): void;
}

export function SupplyFields({ nets, typed, onTyped }: Props) {
  const places = placesOf(typed.kind);
  const toKind = (kind: Typed["kind"]) =>
    onTyped({ ...typed, kind, at: placesOf(kind).map((_, i) => typed.at[i] ?? "") });
  return (
    <section aria-label={say`What it runs on`} className="supply-fields">
      <h3>{say`What it runs on`}</h3>
      <label className="entry">
        {say`Supply`}
        <select value={typed.kind} onChange={(event) => toKind(event.target.value as Typed["kind"])}>
          {KINDS.map(({ kind, words }) => (
            <option key={kind} value={kind}>
              {say(words)}
            </option>
          ))}
        </select>
      </label>
      <label className="entry">
        {say`Volts`}
        <input
          inputMode="decimal"
          value={typed.volts}
          onChange={(event) => onTyped({ ...typed, volts: event.target.value })}
        />
      </label>
      {typed.kind !== "dc" && (
        <label className="entry">
          {say`Hertz`}
          <input
            inputMode="decimal"
            value={typed.hz}
            onChange={(event) => onTyped({ ...typed, hz: event.target.value })}
          />
        </label>
      )}
      {places.map((words, i) => (
        <NetChoice
          key={words}
          words={say(words)}
          nets={nets}
          value={typed.at[i] ?? ""}
          onValue={(net) =>
            onTyped({ ...typed, at: places.map((_, at) => (at === i ? net : (typed.at[at] ?? ""))) })
          }
        />
      ))}
      <NetChoice
        words={say`Rails are measured against`}
        nets={nets}
        value={typed.zero}
        onValue={(zero) => onTyped({ ...typed, zero })}
      />
    </section>
  );
}

interface NetProps {
  readonly words: string;
  readonly nets: readonly string[];
  readonly value: string;
  onValue(net: string): void;
}

function NetChoice({ words, nets, value, onValue }: NetProps) {
  return (
    <label className="entry">
      {words}
      <select value={value} onChange={(event) => onValue(event.target.value)}>
        <option value="">{say`choose a net`}</option>
        {nets.map((net) => (
          <option key={net} value={net}>
            {net}
          </option>
        ))}
      </select>
    </label>
  );
}
