/** How the job has gone: what was believed after each entry, and the money spent and still expected beside the stop line. */
import { useEffect, useState } from "react";
import type { CoursePoint } from "../../wire/bench-view.ts";
import type { Engine } from "../engine.ts";
import type { JobSoFar } from "../engine-messages.ts";
import { drawer } from "../keeper.ts";
import { say } from "../say.ts";
import { useEngine } from "../use-engine.ts";
import type { OpenJob } from "../use-job.ts";
import { listed, money, percent } from "../words.ts";
import { LinePlot } from "./line-plot.tsx";

/** Suspects drawn: the last ones, and whoever led on the way. */
const LINES = 5;

interface Props {
  readonly open: OpenJob;
  readonly currency: string;
}

export default function CoursePlots({ open, currency }: Props) {
  const points = useCourse(open);
  const wanted = open.events.length + 1;
  const last = points.at(-1);
  if (last === undefined || points.length < 2)
    return (
      <p role="status">{wanted < 2 ? say`Nothing has been entered yet.` : say`Working the job out again…`}</p>
    );
  const names = leading(points);
  const sums = points.flatMap(({ spent, toGo, stopLine }) => [spent, toGo ?? 0, stopLine ?? 0]);
  const entry = (x: number) => (x === 0 ? say`start` : say`entry ${x}`);
  return (
    <>
      {points.length < wanted && (
        <p role="status" className="aside">
          {say`${points.length} of ${wanted} entries worked out again…`}
        </p>
      )}
      <LinePlot
        title={say`Who is suspected, entry by entry`}
        words={say`After entry ${last.entries}: ${listed(
          last.suspects.slice(0, LINES).map(({ part, probability }) => `${part} ${percent(probability)}`),
        )}.`}
        lines={names.map((name) => ({
          name,
          points: points.map(({ entries, suspects }) => ({
            x: entries,
            y: suspects.find(({ part }) => part === name)?.probability ?? 0,
          })),
        }))}
        xName={say`after`}
        xWords={entry}
        yTop={1}
        yWords={percent}
      />
      <LinePlot
        title={say`Money spent, still expected, and the stop line`}
        words={
          last.toGo === null || last.stopLine === null
            ? say`Spent ${money(last.spent, currency)}; nothing more is expected.`
            : say`Spent ${money(last.spent, currency)}; still expected ${money(last.toGo, currency)}, and giving up is better once more than ${money(last.stopLine, currency)} is.`
        }
        lines={[
          { name: say`spent`, points: points.map(({ entries, spent }) => ({ x: entries, y: spent })) },
          { name: say`still expected`, points: points.map(({ entries, toGo }) => ({ x: entries, y: toGo })) },
          {
            name: say`stop line`,
            points: points.map(({ entries, stopLine }) => ({ x: entries, y: stopLine })),
          },
        ]}
        xName={say`after`}
        xWords={entry}
        yTop={Math.max(1, ...sums)}
        yWords={(value) => money(value, currency)}
      />
    </>
  );
}

function leading(points: readonly CoursePoint[]): readonly string[] {
  const best = new Map<string, number>();
  for (const [index, { suspects }] of points.entries())
    for (const { part, probability } of suspects) {
      // who is suspected now counts before who once was
      const weight = index === points.length - 1 ? 1 + probability : probability * 0.9;
      best.set(part, Math.max(best.get(part) ?? 0, weight));
    }
  return [...best]
    .sort((a, b) => b[1] - a[1])
    .slice(0, LINES)
    .map(([part]) => part);
}

/** Points worked out before, by job and the last entry that counts with them. */
const known = new Map<string, CoursePoint>();

/** The points so far, worked out one after another by an engine of its own, so that the bench waits for none of them. */
function useCourse({ job, events }: OpenJob): readonly CoursePoint[] {
  const engine = useEngine();
  const [points, setPoints] = useState<readonly CoursePoint[]>([]);
  const opened = job === "loading" ? null : job;
  useEffect(() => {
    if (engine === null || opened === null) return;
    const way = { wanted: true };
    void workOut(engine, { header: opened.header, events }, opened.id, opened.practice !== null, (found) => {
      if (way.wanted) setPoints(found);
      return way.wanted;
    });
    return () => {
      way.wanted = false;
    };
  }, [engine, opened, events]);
  return points;
}

async function workOut(
  engine: Engine,
  { header, events }: JobSoFar,
  id: string,
  practice: boolean,
  told: (points: readonly CoursePoint[]) => boolean,
): Promise<void> {
  if (!practice) await engine.drawer((await drawer().catch(() => null))?.lines ?? []);
  let points: readonly CoursePoint[] = [];
  for (let count = 0; count <= events.length; count++) {
    const key = `${id} ${events[count - 1]?.id ?? ""}`;
    try {
      const point = known.get(key) ?? (await engine.course({ header, events: events.slice(0, count) }));
      known.set(key, point);
      points = [...points, point];
    } catch {
      // a log that was impossible at this entry, and was put right by a later one, has no point here
    }
    if (!told(points)) return;
  }
}
