/** The slip for whoever puts the board back: where each plug goes, how tight, how to start, what to send back. */
import type { Timeline } from "../bench/timeline.ts";
import type { Job } from "../job/job.ts";
import type { PaperMessages } from "../messages/paper-catalogue.ts";
import { torqueRange } from "../parts/cooling/mounting.ts";
import { arrivalPictures } from "./arrival-pictures.ts";
import { heading, list, paperOf, usualFacts } from "./head-facts.ts";
import type { Block, Paper, PaperHead, PaperTable } from "./paper.ts";
import type { PaperWords } from "./paper-words.ts";

/** Cases whose torque is published; a case on the board is not in its file. */
const CASES = ["TO-220", "TO-247", "TO-3P"] as const;

/** Steps in their order; common practice, the waiting time as makers ask for it at its upper end. */
const START = ["fit.off", "fit.measure", "fit.turns", "fit.never"] as const;
const ORDER = ["fit.bus", "fit.phases", "fit.earth"] as const;
const MOUNT = ["mount.clean", "mount.film", "mount.screws"] as const;
const FIRST = ["first.check", "first.stand", "first.watch", "first.trip"] as const;
const BACK = ["back.board", "back.motor", "back.story", "back.wiring", "back.packed"] as const;

export function fittersSlip(job: Job, timeline: Timeline, head: PaperHead, words: PaperWords): Paper {
  const { speak } = words;
  const { say } = speak;
  const said = (
    keys: readonly Extract<keyof PaperMessages, `${"fit" | "mount" | "first" | "back"}.${string}`>[],
  ) => keys.map((key) => say(key));
  const noted = timeline.entries.flatMap(({ event }) =>
    event.do === "note" && event.text !== "" && event.leftOut !== true ? [event.text] : [],
  );
  return paperOf(speak, head, {
    title: say("title.slip"),
    facts: usualFacts(job, head, speak),
    blocks: [
      { block: "caution", items: [say("caution.charged"), say("caution.licensed")] },
      heading(say("slip.start")),
      list(said(START), true),
      heading(say("slip.plugs")),
      { block: "text", text: say("fit.marks") },
      ...plugs(job, words),
      ...arrivalPictures(head, { title: say("slip.pictures"), across: 1 }, speak),
      ...(noted.length === 0 ? [] : [heading(say("slip.noted")), list(noted)]),
      heading(say("slip.order")),
      list(said(ORDER)),
      heading(say("slip.mount")),
      list(said(MOUNT), true),
      torques(words),
      { block: "text", text: say("mount.sheet") },
      heading(say("slip.first")),
      list(said(FIRST), true),
      heading(say("slip.back")),
      list(said(BACK)),
    ],
  });
}

/** Terminals of the supply, then each part that comes off by its plug, pin by pin. */
function plugs({ board }: Job, words: PaperWords): readonly Block[] {
  const { say, apart } = words.speak;
  const plugged = [...board.parts.values()].filter((part) => part.plugged);
  const rows = [
    ...board.supply.at.map((net) => [say("net.mains"), apart(net), ""]),
    ...plugged.flatMap((part) =>
      [...part.pins].map(([pin, net]) => [words.part(part.ref), apart(pin), words.place(net)]),
    ),
  ];
  return [
    {
      block: "table",
      head: [say("head.plug"), say("head.pin"), say("head.goesTo")],
      rows,
      sums: 0,
      shares: [0.4, 0.2, 0.4],
    },
  ];
}

function torques({ speak: { say, number, apart } }: PaperWords): PaperTable {
  const rows = CASES.map((name) => {
    const range = torqueRange(name);
    if (!range.ok) throw new Error(range.problem);
    const { least, most } = range.value;
    return [apart(name), say("head.range", { least: number(least, 2), most: number(most, 2) })];
  });
  return {
    block: "table",
    head: [say("head.case"), say("head.torque")],
    rows,
    sums: 0,
    shares: [0.5, 0.5],
  };
}
