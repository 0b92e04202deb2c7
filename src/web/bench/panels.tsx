/** Beside the card: suspects, grid, log, entries of one's own, the verdict. Tabs on a phone, columns on a laptop. */
import { type KeyboardEvent, type ReactNode, useRef } from "react";
import type { BenchView } from "../../wire/bench-view.ts";
import type { OpenJob } from "../use-job.ts";
import type { Hands } from "./bench-screen.tsx";
import { EnterPanel } from "./enter-panel.tsx";
import { GridPanel } from "./grid-panel.tsx";
import { LogPanel } from "./log-panel.tsx";
import { SuspectsPanel } from "./suspects-panel.tsx";
import { VerdictPanel } from "./verdict-panel.tsx";

export interface PanelProps {
  readonly open: OpenJob;
  readonly view: BenchView;
  readonly hands: Hands;
}

interface Tab {
  readonly name: string;
  readonly words: string;
  readonly panel: ((props: PanelProps) => ReactNode) | null;
}

/** `check` shows the card itself, on a phone; on a wider screen the card is always there and the tab is hidden. */
const TABS: readonly Tab[] = [
  { name: "check", words: "Check", panel: null },
  { name: "suspects", words: "Suspects", panel: SuspectsPanel },
  { name: "grid", words: "Grid", panel: GridPanel },
  { name: "log", words: "Log", panel: LogPanel },
  { name: "enter", words: "Enter", panel: EnterPanel },
  { name: "close", words: "Close", panel: VerdictPanel },
];

interface Props extends PanelProps {
  readonly tab: string;
  onTab(name: string): void;
}

export function Panels({ tab, onTab, ...rest }: Props) {
  return (
    <>
      <TabStrip tab={tab} onTab={onTab} />
      <div className="panels">
        {TABS.map(
          ({ name, words, panel: Panel }) =>
            Panel !== null && (
              <section
                key={name}
                id={`panel-${name}`}
                className="panel"
                role="tabpanel"
                aria-labelledby={`tab-${name}`}
                data-panel={name}
                data-open={tab === name || (tab === "check" && name === "suspects")}
              >
                <h2 className="panel-title">{words}</h2>
                <Panel {...rest} />
              </section>
            ),
        )}
      </div>
    </>
  );
}

function TabStrip({ tab, onTab }: Pick<Props, "tab" | "onTab">) {
  const strip = useRef<HTMLDivElement>(null);
  const arrows = (event: KeyboardEvent) => {
    const step = event.key === "ArrowRight" ? 1 : event.key === "ArrowLeft" ? -1 : 0;
    if (step === 0) return;
    const at = TABS.findIndex(({ name }) => name === tab);
    const next = TABS[(at + step + TABS.length) % TABS.length];
    if (next === undefined) return;
    event.preventDefault();
    onTab(next.name);
    strip.current?.querySelector<HTMLElement>(`#tab-${next.name}`)?.focus();
  };
  return (
    <div className="tabs" role="tablist" aria-label="Bench" ref={strip} onKeyDown={arrows}>
      {TABS.map(({ name, words, panel }) => (
        <button
          type="button"
          role="tab"
          key={name}
          id={`tab-${name}`}
          data-tab={name}
          aria-selected={tab === name}
          aria-controls={panel === null ? undefined : `panel-${name}`}
          tabIndex={tab === name ? 0 : -1}
          onClick={() => onTab(name)}
        >
          {words}
        </button>
      ))}
    </div>
  );
}
