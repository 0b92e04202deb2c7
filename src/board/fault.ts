/** A fault and its spelling: `REF:mode`, `REF.junction:mode`, `NET1~NET2:leaky`, each with an optional `@value`. */

export type FaultMode = "short" | "leaky" | "open" | "drift";

export interface PartFault {
  readonly of: "part";
  readonly part: string;
  /** the junction, winding or pin inside the part; null where the part has only one */
  readonly junction: string | null;
  readonly mode: FaultMode;
  /** ohms (a drifted capacitor: farads) where it is not the nominal value */
  readonly value: number | null;
}

/** Dirt between two neighbouring nets. */
export interface LeakFault {
  readonly of: "nets";
  readonly nets: readonly [string, string];
  readonly mode: "leaky";
  readonly value: number | null;
}

export type Fault = PartFault | LeakFault;

/** The board file format's spelling of a fault. */
export function faultName(fault: Fault): string {
  const where =
    fault.of === "nets"
      ? `${fault.nets[0]}~${fault.nets[1]}`
      : fault.junction === null
        ? fault.part
        : `${fault.part}.${fault.junction}`;
  return `${where}:${fault.mode}${fault.value === null ? "" : `@${fault.value}`}`;
}
