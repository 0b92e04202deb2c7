/** The usual readings, stage by stage, taken in any order: tap a cell and type. */
import { useState } from "react";
import type { GridCellView, GridView } from "../../wire/bench-view.ts";

import { noteTyped } from "../hands/typed-last.ts";
import { actionKey, type Outcome } from "../job-event.ts";
import { say, sayWith } from "../say.ts";

import { MODE_WORDS } from "../words.ts";
import type { PanelProps } from "./bench-props.ts";
import { OnTheWire } from "./on-the-wire.tsx";
import { DigitField, modeOf } from "./reading-keys.tsx";

export function GridPanel({ view, hands, open }: PanelProps) {
  const [at, setAt] = useState<string | null>(null);
  if (view.grids.length === 0)
    return <p className="aside">{say`This board's file names no stages to list readings for.`}</p>;
  return (
    <>
      <p className="aside">
        {say`For readings already taken, in any order. Under each cell: what a healthy board reads.`}
        {!view.safety.open && ` ${say`Prove every capacitor dead first.`}`}
      </p>
      {view.grids.map((grid) => (
        <Grid
          key={`${grid.stage} ${grid.title}`}
          grid={grid}
          beepOhms={view.beepOhms}
          at={at}
          onAt={setAt}
          // A reading typed here follows no proposal, so it is no overruling either.
          onReading={(cell, outcome) => open.recordDone(cell.action, outcome)}
          onCard={(cell) => hands.choose(cell.action)}
        />
      ))}
    </>
  );
}

interface GridProps {
  readonly grid: GridView;
  readonly beepOhms: number;
  readonly at: string | null;
  onAt(key: string | null): void;
  onReading(cell: GridCellView, outcome: Outcome): void;
  onCard(cell: GridCellView): void;
}

function Grid({ grid, beepOhms, at, onAt, onReading, onCard }: GridProps) {
  const open = grid.cells.find((cell) => actionKey(cell.action) === at);
  const read = (cell: GridCellView, outcome: Outcome) => {
    onReading(cell, outcome);
    onAt(nextEmpty(grid, cell));
  };
  return (
    <section className="grid" aria-label={say(grid.title)}>
      <h3>{say(grid.title)}</h3>
      <div className="cells">
        {grid.cells.map((cell) => (
          <Cell
            key={actionKey(cell.action)}
            cell={cell}
            open={cell === open}
            onOpen={() => onAt(cell === open ? null : actionKey(cell.action))}
          />
        ))}
      </div>
      {open !== undefined && (
        <div className="cell-entry">
          <p>{sayWith`${<b>{say(open.label)}</b>}, ${say(MODE_WORDS[modeOf(open.action)] ?? "")}`}</p>
          <OnTheWire
            first
            wanted={{ mode: modeOf(open.action) }}
            beepOhms={beepOhms}
            disabled={false}
            onTake={(outcome) => {
              noteTyped(false);
              read(open, outcome);
            }}
          />
          <DigitField
            key={actionKey(open.action)}
            mode={modeOf(open.action)}
            disabled={false}
            onReading={(reading, climbing) =>
              read(open, climbing ? { reading, settling: "climbing" } : { reading })
            }
          />
          <button type="button" className="small" onClick={() => onCard(open)}>
            {say`Show it as a card`}
          </button>
        </div>
      )}
    </section>
  );
}

function nextEmpty(grid: GridView, from: GridCellView): string | null {
  const next = grid.cells.slice(grid.cells.indexOf(from) + 1).find((cell) => cell.reading === null);
  return next === undefined ? null : actionKey(next.action);
}

interface CellProps {
  readonly cell: GridCellView;
  readonly open: boolean;
  onOpen(): void;
}

function Cell({ cell, open, onOpen }: CellProps) {
  return (
    <button
      type="button"
      className="cell"
      aria-expanded={open}
      data-span={cell.span ?? "none"}
      onClick={onOpen}
    >
      <span className="cell-label">{say(cell.label)}</span>
      <span className="cell-reading">{say(cell.reading ?? "–")}</span>
      <span className="cell-healthy">
        {cell.span === "earlier"
          ? sayWith`good ${<span className="unbroken">{cell.healthy}</span>}; read before the last change`
          : sayWith`good ${<span className="unbroken">{cell.healthy}</span>}`}
      </span>
    </button>
  );
}
