import type { JobEvent } from "../bench/event.ts";

/** An action or event as the front ends pass it on: plain data, its other fields as the log spells them. */
export type ActionView = Record<string, unknown> & { readonly do: JobEvent["do"] };
