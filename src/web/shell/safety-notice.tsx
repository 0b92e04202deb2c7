/** The safety notice: where charge or mains may be met. It defers to local codes and licensed practice. */
import type { ReactNode } from "react";
import { say } from "../say.ts";

export function SafetyNotice({ children }: { readonly children?: ReactNode }) {
  return (
    <aside className="safety" aria-label={say`Safety`}>
      <strong>{say`This work can kill.`}</strong>{" "}
      {children ??
        say`Unplug the unit, and measure every capacitor dead at its own pins before a hand goes in. Local codes and licensed practice decide who may open and power it; they come before anything shown here.`}
    </aside>
  );
}
