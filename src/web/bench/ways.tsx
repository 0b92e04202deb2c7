/** After a recorded case: one's own way beside the recorded and the proposed one, step by step, and as a page for the printer. */
import { useState } from "react";
import { Engine } from "../engine.ts";
import type { PracticeInfo, WaysThrough } from "../engine-messages.ts";
import { saveFile } from "../save-file.ts";
import { say } from "../say.ts";
import type { OpenJob } from "../use-job.ts";

export function Ways({ open, practice }: { readonly open: OpenJob; readonly practice: PracticeInfo }) {
  const [through, setThrough] = useState<WaysThrough | "working" | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const show = async () => {
    if (open.job === null || open.job === "loading") return;
    setThrough("working");
    const engine = new Engine();
    try {
      setThrough(await engine.ways({ header: open.job.header, events: open.events }, practice));
    } catch (error) {
      setThrough(null);
      setProblem((error as Error).message);
    } finally {
      engine.stop();
    }
  };
  if (through === null || through === "working")
    return (
      <>
        {problem !== null && (
          <p role="alert" className="problem">
            {say(problem)}
          </p>
        )}
        <button type="button" disabled={through === "working"} onClick={() => void show()}>
          {through === "working" ? say`Working it out…` : say`Lay the ways side by side`}
        </button>
      </>
    );
  const most = Math.max(...through.ways.map(({ steps }) => steps.length));
  return (
    <div className="ways">
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table that scrolls sideways must be reachable by keys */}
      <section className="ways-scroll" aria-label={say`The ways side by side`} tabIndex={0}>
        <table>
          <thead>
            <tr>
              <th scope="col">{say`Step`}</th>
              {through.ways.map(({ name, sum }) => (
                <th key={name} scope="col">
                  {say(name)} <small>{say(sum)}</small>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {Array.from({ length: most }, (_, row) => row).map((row) => (
              <tr key={row}>
                <th scope="row">{row + 1}</th>
                {through.ways.map(({ name, steps }) => (
                  <td key={name}>
                    {say(steps[row]?.words ?? "")} <small>{say(steps[row]?.cost ?? "")}</small>{" "}
                    <small>{say(steps[row]?.why ?? "")}</small>
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <button type="button" onClick={() => saveFile("case.html", "text/html", through.page)}>
        {say`Save it as a page for the printer`}
      </button>
    </div>
  );
}
