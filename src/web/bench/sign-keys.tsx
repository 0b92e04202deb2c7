/** Signs of life at a power-up, two keys a part: what is not marked was not looked at. */
import type { BenchView } from "../../wire/bench-view.ts";
import { named, say } from "../say.ts";

type Signs = Readonly<Record<string, boolean>>;

interface Props {
  readonly toNote: BenchView["signs"];
  readonly signs: Signs;
  readonly disabled: boolean;
  onSigns(signs: Signs): void;
}

export function SignKeys({ toNote, signs, disabled, onSigns }: Props) {
  if (toNote.length === 0) return null;
  const mark = (part: string, there: boolean) => {
    const { [part]: before, ...rest } = signs;
    onSigns(before === there ? rest : { ...rest, [part]: there });
  };
  return (
    <section className="sign-keys" aria-label={say`Signs of life`}>
      <p className="feed">{say`Signs of life: mark what you looked at, leave out the rest.`}</p>
      {toNote.map(({ part, there, missing }) => (
        <fieldset key={part} aria-label={named(part)}>
          <b>{part}</b>
          {[true, false].map((came) => (
            <button
              type="button"
              key={String(came)}
              aria-pressed={signs[part] === came}
              disabled={disabled}
              onClick={() => mark(part, came)}
            >
              {say(came ? there : missing)}
            </button>
          ))}
        </fieldset>
      ))}
    </section>
  );
}
