/** The usual readings, stage by stage, taken in any order: tap a cell and type. */
import { useState } from "react";
import type { GridCellView, GridView } from "../../wire/bench-view.ts";
import { actionKey } from "../job-event.ts";
import { say, sayWith } from "../say.ts";
import { MODE_WORDS } from "../words.ts";
import type { PanelProps } from "./bench-props.ts";
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
          at={at}
          onAt={setAt}
          // A reading typed here follows no proposal, so it is no overruling either.
          onReading={(cell, reading, climbing) =>
            open.recordDone(cell.action, climbing ? { reading, settling: "climbing" } : { reading })
          }
          onCard={(cell) => hands.choose(cell.action)}
        />
      ))}
    </>
  );
}

interface GridProps {
  readonly grid: GridView;
  readonly at: string | null;
  onAt(key: string | null): void;
  onReading(cell: GridCellView, reading: number | string, climbing: boolean): void;
  onCard(cell: GridCellView): void;
}

function Grid({ grid, at, onAt, onReading, onCard }: GridProps) {
  const open = grid.cells.find((cell) => actionKey(cell.action) === at);
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
          <DigitField
            key={actionKey(open.action)}
            mode={modeOf(open.action)}
            disabled={false}
            onReading={(reading, climbing) => {
              onReading(open, reading, climbing);
              onAt(nextEmpty(grid, open));
            }}
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
          ? say`good ${cell.healthy}; read before the last change`
          : say`good ${cell.healthy}`}
      </span>
    </button>
  );
}
