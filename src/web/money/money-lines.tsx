import { figure, say } from "../say.ts";

/** Lines of money, amounts under each other, sums below a rule. */

interface Line {
  readonly words: string;
  readonly amount: string;
  readonly estimated: boolean;
  readonly aside?: string;
}

interface Props {
  readonly caption: string;
  readonly lines: readonly Line[];
  readonly sums: readonly Pick<Line, "words" | "amount">[];
}

export function MoneyLines({ caption, lines, sums }: Props) {
  return (
    <table className="money-lines">
      <caption className="for-readers">{caption}</caption>
      <tbody>
        {lines.map(({ words, aside, amount, estimated }, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two lines of a bill may read the same
          <tr key={at}>
            <th scope="row">
              {say(words)}
              {estimated && <small>{say`price not noted: the usual one`}</small>}
              {aside !== undefined && <small>{say(aside)}</small>}
            </th>
            <td className="figure">{figure(amount)}</td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        {sums.map(({ words, amount }) => (
          <tr key={words}>
            <th scope="row">{say(words)}</th>
            <td className="figure">{figure(amount)}</td>
          </tr>
        ))}
      </tfoot>
    </table>
  );
}
