import { say } from "../say.ts";

interface Pair {
  readonly head: string;
  readonly text: string;
  readonly aside?: string;
}

/** Things in two lines each: what, and what is to be known of it. */
export function Pairs({ pairs }: { readonly pairs: readonly Pair[] }) {
  return (
    <dl className="fit-rules">
      {pairs.map(({ head, text, aside }) => (
        <div key={head}>
          <dt>{say(head)}</dt>
          <dd>
            {say(text)}
            {aside !== undefined && <span className="aside"> ({say(aside)})</span>}
          </dd>
        </div>
      ))}
    </dl>
  );
}
