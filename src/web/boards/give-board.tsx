/** A board as one file to give away, with or without counts of the jobs that were closed on it. */
import { useState } from "react";
import { api } from "../api.ts";
import { boardFacts } from "../board-facts.ts";
import { openOwnBoard, sendBoards } from "../board-keeper.ts";
import type { JobSoFar } from "../engine-messages.ts";
import { packedAlbum } from "../picture/packed-album.ts";
import { saveFile } from "../save-file.ts";
import { say } from "../say.ts";
import { useEngine } from "../use-engine.ts";

interface Props {
  readonly id: string;
  readonly content: Readonly<Record<string, unknown>>;
}

export function GiveBoard({ id, content }: Props) {
  const engine = useEngine();
  const [counts, setCounts] = useState(false);
  const [withPictures, setWithPictures] = useState(false);
  const [problem, setProblem] = useState<string | null>(null);
  const give = async () => {
    if (engine === null) return;
    try {
      const outcomes = (await openOwnBoard(id))?.outcomes ?? {};
      const jobs = counts ? await closedJobs(id, content) : [];
      const pictures = withPictures ? await packedAlbum(boardFacts(content).identity) : null;
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

/** Those on this board by whatever name it bore. Practice tells nothing of the boards of this world. */
async function closedJobs(id: string, content: Props["content"]): Promise<readonly JobSoFar[]> {
  const { name, identity } = boardFacts(content);
  await sendBoards();
  const { versions } = await api.ownBoard(id);
  const names = new Set([name, ...versions.map(({ title }) => title)]);
  const { jobs } = await api.jobs();
  const closed = jobs.filter(
    ({ verdict, practice, boardName }) => verdict !== null && practice === null && names.has(boardName),
  );
  const read = await Promise.all(closed.map((job) => api.job(job.id)));
  return read.filter(({ header }) => boardFacts(header.board).identity === identity);
}
