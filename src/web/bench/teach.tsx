/** A closed job becomes somebody's practice: seen first, then saved as a file or begun here. */
import { useState } from "react";
import { Engine } from "../engine.ts";
import type { TaughtCase } from "../engine-messages.ts";
import { newId } from "../job-event.ts";
import { startJob } from "../keeper.ts";
import { go } from "../route.ts";
import { saveFile } from "../save-file.ts";
import { say } from "../say.ts";
import type { OpenJob } from "../use-job.ts";

export function Teach({ open }: { readonly open: OpenJob }) {
  const [title, setTitle] = useState("");
  const [made, setMade] = useState<TaughtCase | "working" | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const make = async () => {
    if (open.job === null || open.job === "loading") return;
    setMade("working");
    setProblem(null);
    // A worker of its own: the proposed way is worked out to its end, which takes a while.
    const engine = new Engine();
    try {
      const named = title.trim() === "" ? say`A recorded case` : title.trim();
      setMade(await engine.teach({ header: open.job.header, events: open.events }, named));
    } catch (error) {
      setMade(null);
      setProblem((error as Error).message);
    } finally {
      engine.stop();
    }
  };
  const begin = async (given: TaughtCase) => {
    const id = newId();
    await startJob({ id, title: given.title, practice: given.practice, job: given.header }, [], []);
    go(`#/job/${id}`);
  };
  return (
    <details>
      <summary>{say`Make practice of it for somebody`}</summary>
      <label className="entry">
        {say`What the apprentice reads above it`}
        <input
          value={title}
          autoComplete="off"
          maxLength={120}
          onChange={(event) => setTitle(event.target.value)}
        />
      </label>
      <button type="button" disabled={made === "working"} onClick={() => void make()}>
        {say`Show what would be in it`}
      </button>
      {made === "working" && <p role="status">{say`Working the job again, to the end…`}</p>}
      {problem !== null && (
        <p role="alert" className="problem">
          {say(problem)}
        </p>
      )}
      {made !== null && made !== "working" && (
        <div className="preview">
          <ul>
            {made.preview.map((line) => (
              <li key={line}>{say(line)}</li>
            ))}
          </ul>
          <button type="button" className="primary" onClick={() => void begin(made)}>
            {say`Begin it here`}
          </button>
          <button type="button" onClick={() => saveFile("case.json", "application/json", made.text)}>
            {say`Save the case`}
          </button>
        </div>
      )}
    </details>
  );
}
