/** The cautions at a step, with one tap that says they were read. */
import { saidCount } from "../../messages/said.ts";
import type { KeptEvent } from "../job-event.ts";
import { say } from "../say.ts";
import { useConfirmed } from "./confirmed-cautions.ts";

interface Props {
  readonly job: string;
  readonly events: readonly KeptEvent[];
  readonly cautions: readonly string[];
  /** power comes next: what is said before that is said each time */
  readonly beforePower: boolean;
}

/** What is confirmed gives way to the step itself: the eye, and the focus that the key had, go to the top of the card. */
function toTheCard(from: HTMLElement): void {
  from.closest<HTMLElement>(".card")?.focus({ preventScroll: true });
  scrollTo({ top: 0 });
}

export function Cautions({ job, events, cautions, beforePower }: Props) {
  const { fresh, confirmed, confirm } = useConfirmed(job, events, cautions);
  const shown = beforePower ? cautions : fresh;
  if (cautions.length === 0) return null;
  return (
    <section className="cautions-place" aria-label={say`Cautions`}>
      {shown.length > 0 && (
        <>
          <ul className="cautions" aria-label={say`Caution`}>
            {shown.map((caution) => (
              <li key={caution}>{say(caution)}</li>
            ))}
          </ul>
          {!beforePower && (
            <button
              type="button"
              className="quiet small"
              data-key="c"
              onClick={(event) => {
                confirm();
                toTheCard(event.currentTarget);
              }}
            >
              {say`Understood: not again until power changes`}
            </button>
          )}
        </>
      )}
      {!beforePower && confirmed.length > 0 && (
        <details className="cautions-confirmed">
          <summary>
            {say(saidCount(confirmed.length, "{0} caution confirmed", "{0} cautions confirmed"))}
          </summary>
          <ul className="cautions">
            {confirmed.map((caution) => (
              <li key={caution}>{say(caution)}</li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}
