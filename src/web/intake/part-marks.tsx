/** What came with the board, and which parts differ from the board file: one tap each. */
import { useState } from "react";
import { matching } from "../bench/search-field.tsx";
import { type PartFact, partFacts } from "../board-facts.ts";
import { kindWords, stageWords } from "../kind-words.ts";
import { say, sayWith } from "../say.ts";
import type { IntakeProps, PartMark } from "./intake.ts";

const SHOWN = 12;

export function PartMarks({ intake, change }: IntakeProps) {
  const [typed, setTyped] = useState("");
  if (intake.board === null) return null;
  const parts = partFacts(intake.board);
  const loose = parts.filter((part) => part.plugged || part.kind === "motor");
  const rest = parts.filter((part) => !loose.includes(part));
  const found = matching(
    rest.map((part) => ({ value: part.ref, words: wordsOf(part) })),
    typed,
  );
  const refs = new Set(found.slice(0, SHOWN).map(({ value }) => value));
  const shown = rest.filter((part) => refs.has(part.ref) || intake.marks.has(part.ref));
  const mark = (ref: string, to: PartMark | null) => {
    const marks = new Map(intake.marks);
    if (to === null) marks.delete(ref);
    else marks.set(ref, to);
    change({ marks });
  };
  return (
    <fieldset>
      <legend>{say`What came with it`}</legend>
      {loose.map((part) => (
        <Came key={part.ref} part={part} absent={intake.marks.get(part.ref) === "absent"} onMark={mark} />
      ))}
      <details>
        <summary>{say`Parts that are missing, different, or that you are unsure of`}</summary>
        <label className="entry">
          {say`Find a part`}
          <input
            value={typed}
            placeholder={say`R12, fuse, rectifier`}
            onChange={(event) => setTyped(event.target.value)}
          />
        </label>
        <ul className="part-marks">
          {shown.map((part) => (
            <Marks key={part.ref} part={part} mark={intake.marks.get(part.ref) ?? null} onMark={mark} />
          ))}
        </ul>
        {found.length > SHOWN && (
          <p className="aside">{say`${found.length - SHOWN} more: type to narrow.`}</p>
        )}
      </details>
    </fieldset>
  );
}

/** All by which it is found: as the file has it, and as the page says it. */
const wordsOf = ({ kind, stage, role }: PartFact): string =>
  `${kind} ${kindWords(kind)} ${stage} ${stageWords(stage)} ${role}`;

interface CameProps {
  readonly part: PartFact;
  readonly absent: boolean;
  onMark(ref: string, to: PartMark | null): void;
}

function Came({ part, absent, onMark }: CameProps) {
  return (
    <label className="tick">
      <input type="checkbox" checked={!absent} onChange={() => onMark(part.ref, absent ? null : "absent")} />
      <span>
        {sayWith`${<span className="ref">{part.ref}</span>} ${part.role === "" ? kindWords(part.kind) : part.role} is here and plugged in`}
      </span>
    </label>
  );
}

interface MarksProps {
  readonly part: PartFact;
  readonly mark: PartMark | null;
  onMark(ref: string, to: PartMark | null): void;
}

function Marks({ part, mark, onMark }: MarksProps) {
  const key = (to: PartMark, words: string) => (
    <button
      type="button"
      aria-pressed={mark === to}
      onClick={() => onMark(part.ref, mark === to ? null : to)}
    >
      {words}
    </button>
  );
  return (
    <li>
      <span>
        <span className="ref">{part.ref}</span> {say`${kindWords(part.kind)}, ${stageWords(part.stage)}`}
      </span>
      {key("absent", say`Missing`)}
      {key("different", say`Different`)}
      {key("unsure", say`Not sure`)}
    </li>
  );
}
