/** Names in a traced file that nobody can guess: what each is, and which of its pins is which. */
import { useId } from "react";
import { plain } from "../../messages/said.ts";
import type { MappedPins, TracedFile } from "../../wire/own-board.ts";
import { kindWords } from "../kind-words.ts";
import { say } from "../say.ts";

type Unmapped = TracedFile["unmapped"][number];
type Mapped = Readonly<Record<string, MappedPins | null>>;

interface Props {
  /** every name that was asked about since the file was opened */
  readonly asked: readonly Unmapped[];
  /** those that are still not understood */
  readonly open: readonly Unmapped[];
  readonly kinds: TracedFile["kinds"];
  readonly mapped: Mapped;
  onMapped(mapped: Mapped): void;
}

const LEFT_OUT = "left out";

export function MappingTable({ asked, open, kinds, mapped, onMapped }: Props) {
  if (asked.length === 0) return null;
  return (
    <section aria-label={say`What nobody could guess`}>
      <h3>{say`What nobody could guess`}</h3>
      {asked.map((one) => (
        <MappedName
          key={one.name}
          unmapped={one}
          why={open.find(({ name }) => name === one.name)?.why ?? null}
          kinds={kinds}
          answer={mapped[one.name]}
          onAnswer={(answer) => onMapped({ ...mapped, [one.name]: answer })}
        />
      ))}
    </section>
  );
}

interface NameProps {
  readonly unmapped: Unmapped;
  /** null: it is understood now */
  readonly why: string | null;
  readonly kinds: TracedFile["kinds"];
  /** undefined: not answered yet; null: left out */
  readonly answer: MappedPins | null | undefined;
  onAnswer(answer: MappedPins | null): void;
}

function MappedName({ unmapped, why, kinds, answer, onAnswer }: NameProps) {
  const { name, refs, pins } = unmapped;
  const kind = kinds.find((one) => one.kind === answer?.kind);
  const chosen = answer === null ? LEFT_OUT : (answer?.kind ?? "");
  const choose = (value: string) => {
    if (value === LEFT_OUT) return onAnswer(null);
    const next = kinds.find((one) => one.kind === value);
    if (next !== undefined) onAnswer({ kind: value, pins: guessedPins(unmapped, next) });
  };
  return (
    <fieldset className="mapped-name" data-open={why !== null && answer !== null}>
      <legend>
        {name} <small>{refs.join(" ")}</small>
      </legend>
      <label className="entry">
        {say`What ${name} is`}
        <select value={chosen} onChange={(event) => choose(event.target.value)}>
          <option value="" disabled>
            {say`choose`}
          </option>
          <option value={LEFT_OUT}>{say`no part of the board: leave it out`}</option>
          {kinds.map((one) => (
            <option key={one.kind} value={one.kind}>
              {plain(one.words) === one.kind
                ? kindWords(one.kind)
                : `${kindWords(one.kind)} (${say(one.words)})`}
            </option>
          ))}
        </select>
      </label>
      {kind !== undefined && answer != null && (
        <div className="mapped-pins">
          {pins.map(({ id, name: own, net }) => (
            <PinChoice
              key={id}
              words={
                own === "" || own === id ? say`Pin ${id}, on ${net}` : say`Pin ${id} (${own}), on ${net}`
              }
              kind={kind}
              value={answer.pins[id] ?? ""}
              onValue={(pin) => onAnswer({ ...answer, pins: { ...answer.pins, [id]: pin } })}
            />
          ))}
        </div>
      )}
      {why !== null && answer !== null && <p className="aside">{say(why)}</p>}
    </fieldset>
  );
}

interface PinProps {
  readonly words: string;
  readonly kind: TracedFile["kinds"][number];
  readonly value: string;
  onValue(pin: string): void;
}

/** A chip has pins of any name; every other kind its own. */
function PinChoice({ words, kind, value, onValue }: PinProps) {
  const id = useId();
  return (
    <div className="entry">
      <label htmlFor={id}>{words}</label>
      {kind.otherPins ? (
        <input
          id={id}
          value={value}
          autoComplete="off"
          autoCapitalize="off"
          placeholder={kind.pins.join(" ")}
          onChange={(event) => onValue(event.target.value)}
        />
      ) : (
        <select id={id} value={value} onChange={(event) => onValue(event.target.value)}>
          <option value="">{say`none of them`}</option>
          {kind.pins.map((pin) => (
            <option key={pin} value={pin}>
              {pin}
            </option>
          ))}
        </select>
      )}
    </div>
  );
}

/** Pins called like the kind's, or a chip's by their own names; the rest is for the person to say. */
function guessedPins({ pins }: Unmapped, kind: TracedFile["kinds"][number]): MappedPins["pins"] {
  return Object.fromEntries(
    pins.map(({ id, name }) => {
      const alike = kind.pins.find((pin) => pin.toLowerCase() === name.toLowerCase() || pin === id);
      const own = kind.otherPins ? name.replace(/[^A-Za-z0-9_+-]+/g, "_") || id : "";
      return [id, alike ?? own];
    }),
  );
}
