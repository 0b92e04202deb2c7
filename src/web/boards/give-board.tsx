/** A board as one file to give away, with or without counts of the jobs that were closed on it. */
import { useState } from "react";
import { api } from "../api.ts";
import { openOwnBoard } from "../board-keeper.ts";
import type { JobSoFar } from "../engine-messages.ts";
import { packedAlbum } from "../picture/packed-album.ts";
import { saveFile } from "../save-file.ts";
import { say } from "../say.ts";
import { useEngine } from "../use-engine.ts";

interface Props {
  readonly id: string;
  readonly title: string;
  readonly content: Readonly<Record<string, unknown>>;
}

export function GiveBoard({ id, title, content }: Props) {
  const engine = useEngine();
  const [counts, setCounts] = useState(false);
  const [withPictures, setWithPictures] = useState(false);
  const [problem, setProblem] = useState<string | null>(null);
  const give = async () => {
    if (engine === null) return;
    try {
      const outcomes = (await openOwnBoard(id))?.outcomes ?? {};
      const jobs = counts ? await closedJobs(title) : [];
      const pictures = withPictures ? await packedAlbum(title) : null;
      saveFile(
        `${id}.json`,
        "application/json",
        await engine.pack({ content, outcomes, shop: "shop", jobs, pictures }),
      );
      setProblem(null);
    } catch (error) {
      setProblem((error as Error).message);
    }
  };
  return (
    <details>
      <summary>{say`Give the board away`}</summary>
      <label className="tick">
        <input type="checkbox" checked={counts} onChange={(event) => setCounts(event.target.checked)} />
        {say`With counts of the jobs closed on it (how many, how they ended, which parts were replaced) and with what good boards beside theirs read; no customer, no note, no picture of a job`}
      </label>
      <label className="tick">
        <input
          type="checkbox"
          checked={withPictures}
          onChange={(event) => setWithPictures(event.target.checked)}
        />
        {say`With the photos of the board and the places pinned on them`}
      </label>
      {problem !== null && (
        <p role="alert" className="problem">
          {say(problem)}
        </p>
      )}
      <button type="button" onClick={() => void give()}>
        {say`Save the file`}
      </button>
    </details>
  );
}

/** Practice tells nothing of the boards of this world. */
async function closedJobs(boardName: string): Promise<readonly JobSoFar[]> {
  const { jobs } = await api.jobs();
  const closed = jobs.filter(
    (job) => job.verdict !== null && job.practice === null && job.boardName === boardName,
  );
  return Promise.all(closed.map(({ id }) => api.job(id)));
}
