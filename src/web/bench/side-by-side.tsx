/** What lies at hand and what is sold, beside the part that was there: a table of ratings, each that objects with its sign. */
import type { SideBySide } from "../../wire/fit-view.ts";
import { say } from "../say.ts";
import { FINDING_SIGNS } from "./finding-signs.ts";

export function SideBySideTable({ compared: { columns, rows } }: { readonly compared: SideBySide }) {
  return (
    <section aria-label={say`Side by side`}>
      <h3>{say`Side by side`}</h3>
      <table className="fit-table side-by-side">
        <thead>
          <tr>
            <th scope="col">{say`Rating`}</th>
            <th scope="col">{say`Was there`}</th>
            {columns.map(({ name, fits, inHouse }) => (
              <th scope="col" key={name}>
                <span className="ref">{name}</span>
                <small>{inHouse ? say`${fits}, at hand` : say(fits)}</small>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ rating, words, was, cells }) => (
            <tr key={rating}>
              <th scope="row">{say(words)}</th>
              <td>{was === null ? "?" : say(was)}</td>
              {cells.map(({ text, against }, at) => (
                <td key={columns[at]?.name} data-against={against}>
                  {text === null ? "?" : say(text)}
                  {against !== null && <small>{say(FINDING_SIGNS[against])}</small>}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
