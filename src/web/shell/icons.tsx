/** Line drawings: the meter's modes and the two probes. Decoration only; words stand beside each. */
import type { ReactNode } from "react";

function Drawing({ children, box = "0 0 32 24" }: { readonly children: ReactNode; readonly box?: string }) {
  return (
    <svg
      className="drawing"
      viewBox={box}
      fill="none"
      stroke="currentColor"
      strokeWidth="2.2"
      strokeLinecap="round"
      strokeLinejoin="round"
      aria-hidden="true"
    >
      {children}
    </svg>
  );
}

const VOLTS = <path d="M8 5l5 13 5-13" />;

const MODES: Readonly<Record<string, ReactNode>> = {
  diode: <path d="M3 12h8M11 5v14l10-7zM21 5v14M21 12h8" />,
  continuity: (
    <path d="M5 14a3 3 0 1 0 6 0 3 3 0 1 0-6 0M15 9a8 8 0 0 1 0 10M19 6a13 13 0 0 1 0 16M23 3a18 18 0 0 1 0 20" />
  ),
  ohms: <path d="M7 20h6v-3a7 7 0 1 1 6 0v3h6" />,
  farads: <path d="M3 12h10M13 4v16M19 4v16M19 12h10" />,
  dcv: (
    <>
      {VOLTS}
      <path d="M22 9h8M22 14h2M25 14h2M28.5 14h1.5" />
    </>
  ),
  acv: (
    <>
      {VOLTS}
      <path d="M22 12c2-5 4-5 4 0s2 5 4 0" />
    </>
  ),
  amps: <path d="M10 20l6-16 6 16M12.500 14h7" />,
  temperature: <path d="M14 4a2 2 0 0 1 4 0v9a5 5 0 1 1-4 0zM16 9v8" />,
};

export function ModeDrawing({ mode }: { readonly mode: string }) {
  return <Drawing>{MODES[mode] ?? MODES.ohms}</Drawing>;
}

/** A probe, tip to the lower left. */
export function ProbeDrawing() {
  return (
    <Drawing box="0 0 48 48">
      <path d="M4 44l9-9" strokeWidth="3" />
      <path d="M11 33l4 4 5-1 17-17-8-8-17 17z" fill="currentColor" />
      <path d="M33 15c4-5 5-9 12-11" strokeWidth="4" />
    </Drawing>
  );
}

export function Wordmark() {
  return (
    <span className="wordmark">
      <Drawing box="0 0 32 24">
        <path d="M2 17h7l3-9 5 13 4-9h9" strokeWidth="3" />
      </Drawing>
      Faultwright
    </span>
  );
}
