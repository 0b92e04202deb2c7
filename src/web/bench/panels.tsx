/** Beside the card: suspects, grid, log, entries of one's own, the verdict. Tabs on a phone, columns on a laptop. */

import { type KeyboardEvent, type ReactNode, useRef } from "react";
import { said } from "../../messages/said.ts";
import type { Layout } from "../layout.ts";
import { BoardPanel } from "../picture/board-panel.tsx";
import { forms, say } from "../say.ts";
import type { PanelProps } from "./bench-props.ts";
import { EnterPanel } from "./enter-panel.tsx";
import { GridPanel } from "./grid-panel.tsx";
import { LogPanel } from "./log-panel.tsx";
import { SuspectsPanel } from "./suspects-panel.tsx";
import { VerdictPanel } from "./verdict-panel.tsx";

interface Tab {
  readonly name: string;
  readonly words: string;
  /** null: the card itself, which on a phone is one of the tabs */
  readonly panel: ((props: PanelProps) => ReactNode) | null;
  readonly on: readonly Layout[];
}

const TABS: readonly Tab[] = [
  { name: "check", words: said`Check`, panel: null, on: ["phone"] },
  { name: "suspects", words: said`Suspects`, panel: SuspectsPanel, on: ["phone", "middle"] },
  { name: "board", words: said`Board`, panel: BoardPanel, on: ["phone", "middle", "wide"] },
  { name: "grid", words: said`Grid`, panel: GridPanel, on: ["phone", "middle", "wide"] },
  { name: "log", words: said`Log`, panel: LogPanel, on: ["phone", "middle", "wide"] },
  { name: "enter", words: said`Enter`, panel: EnterPanel, on: ["phone", "middle", "wide"] },
  { name: "close", words: said`Close`, panel: VerdictPanel, on: ["phone", "middle", "wide"] },
];

interface Props extends PanelProps {
  readonly layout: Layout;
  readonly tab: string;
  onTab(name: string): void;
}

export function Panels({ layout, tab, onTab, ...rest }: Props) {
  const tabs = TABS.filter(({ on }) => on.includes(layout));
  const shown = tabs.find(({ name }) => name === tab) ?? tabs[0];
  const Panel = shown?.panel ?? null;
  return (
    <>
      {layout === "wide" && (
        <section className="panel suspects-column" aria-labelledby="suspects-title">
          <h2 id="suspects-title">{say`Suspects`}</h2>
          <SuspectsPanel {...rest} />
        </section>
      )}
      <div className="side">
        <TabStrip tabs={tabs} tab={shown?.name ?? ""} onTab={onTab} />
        {shown !== undefined && Panel !== null && (
          <section
            className="panel"
            id={`panel-${shown.name}`}
            role="tabpanel"
            aria-labelledby={`tab-${shown.name}`}
          >
            <h2 className="panel-title">{say(shown.words)}</h2>
            <Panel {...rest} />
          </section>
        )}
      </div>
    </>
  );
}

interface StripProps {
  readonly tabs: readonly Tab[];
  readonly tab: string;
  onTab(name: string): void;
}

function TabStrip({ tabs, tab, onTab }: StripProps) {
  const strip = useRef<HTMLDivElement>(null);
  const arrows = (event: KeyboardEvent) => {
    const onward = forms().direction === "rtl" ? "ArrowLeft" : "ArrowRight";
    const back = forms().direction === "rtl" ? "ArrowRight" : "ArrowLeft";
    const step = event.key === onward ? 1 : event.key === back ? -1 : 0;
    if (step === 0) return;
    const at = tabs.findIndex(({ name }) => name === tab);
    const next = tabs[(at + step + tabs.length) % tabs.length];
    if (next === undefined) return;
    event.preventDefault();
    onTab(next.name);
    strip.current?.querySelector<HTMLElement>(`#tab-${next.name}`)?.focus();
  };
  return (
    <div className="tabs" role="tablist" aria-label={say`Bench`} ref={strip} onKeyDown={arrows}>
      {tabs.map(({ name, words, panel }) => (
        <button
          type="button"
          role="tab"
          key={name}
          id={`tab-${name}`}
          aria-selected={tab === name}
          aria-controls={tab === name && panel !== null ? `panel-${name}` : undefined}
          tabIndex={tab === name ? 0 : -1}
          onClick={() => onTab(name)}
        >
          {say(words)}
        </button>
      ))}
    </div>
  );
}
