/** The original and a candidate side by side, rating by rating; what the board file does not know is typed in. */
import { plain } from "../../messages/said.ts";
import type { FitField, FitView, TypedFit } from "../../wire/fit-view.ts";
import { say } from "../say.ts";

interface CandidateTableProps {
  readonly view: FitView;
  readonly typed: TypedFit;
  onType(typed: TypedFit): void;
}

type Column = "original" | "candidate";

export function CandidateTable({ view, typed, onType }: CandidateTableProps) {
  const type = (column: Column, name: string, text: string) =>
    onType({ ...typed, [column]: { ...typed[column], [name]: text } });
  const problemOf = (column: Column, name: string) =>
    view.problems.find((one) => one.of === column && one.name === name)?.problem ?? null;
  const cell = (column: Column, field: FitField) => (
    <RatingCell
      label={column === "original" ? say`${field.words}, was there` : say`${field.words}, candidate`}
      field={field}
      text={typed[column][field.name] ?? ""}
      problem={problemOf(column, field.name)}
      onType={(text) => type(column, field.name, text)}
    />
  );
  return (
    <table className="fit-table">
      <thead>
        <tr>
          <th scope="col">{say`Rating`}</th>
          <th scope="col">{say`Was there`}</th>
          <th scope="col">{say`Candidate`}</th>
        </tr>
      </thead>
      <tbody>
        {view.fields.map((field) => (
          <tr key={field.name}>
            <th scope="row">
              {say(field.words)}
              {field.unit !== null && <span className="aside"> {field.unit}</span>}
            </th>
            <td>{field.original === null ? cell("original", field) : say(field.original)}</td>
            <td>{cell("candidate", field)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

interface RatingCellProps {
  readonly label: string;
  readonly field: FitField;
  readonly text: string;
  readonly problem: string | null;
  onType(text: string): void;
}

function RatingCell({ label, field, text, problem, onType }: RatingCellProps) {
  if (field.choices.length > 0)
    return (
      <select aria-label={label} value={text} onChange={(event) => onType(event.target.value)}>
        <option value="">?</option>
        {field.choices.map((choice) => (
          <option key={choice} value={plain(choice)}>
            {say(choice)}
          </option>
        ))}
      </select>
    );
  return (
    <>
      <input
        aria-label={label}
        autoComplete="off"
        value={text}
        aria-invalid={problem !== null}
        onChange={(event) => onType(event.target.value)}
      />
      {problem !== null && <p role="alert">{say(problem)}</p>}
    </>
  );
}
