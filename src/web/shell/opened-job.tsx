/** Opens a job for a screen of it, and says meanwhile what it waits for. */
import type { ReactNode } from "react";
import { said } from "../../messages/said.ts";
import type { BenchView } from "../../wire/bench-view.ts";
import { go } from "../route.ts";
import { say } from "../say.ts";
import { type OpenJob, useJob } from "../use-job.ts";
import { Wordmark } from "./icons.tsx";

interface Props {
  readonly id: string;
  children(open: OpenJob, view: BenchView): ReactNode;
}

export function OpenedJob({ id, children }: Props) {
  const open = useJob(id);
  if (open.job === "loading") return <Blank words={say`Opening the job…`} />;
  if (open.job === null)
    return (
      <Blank
        words={say`This job is not in this browser, and the bench computer does not have it or is away.`}
      />
    );
  if (open.view === null)
    return (
      <Blank
        words={say(open.problem ?? said`Working out what this board would show…`)}
        bad={open.problem !== null}
      />
    );
  return children(open, open.view);
}

function Blank({ words, bad = false }: { readonly words: string; readonly bad?: boolean }) {
  return (
    <main className="blank">
      <Wordmark />
      <p role={bad ? "alert" : "status"}>{words}</p>
      <button type="button" onClick={() => go("#/")}>
        {say`All jobs`}
      </button>
    </main>
  );
}
