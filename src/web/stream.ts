/** What the bench computer tells at once: one stream for the whole page, open while anybody listens. */
import { useEffect, useState } from "react";
import type { MeterNow } from "../wire/meter-api.ts";
import { BEAT_MS, type StreamNews } from "../wire/stream-api.ts";

type Name = keyof StreamNews;
type Listener = { readonly name: Name; readonly hear: (data: never) => void };

const REOPEN_MS = 2_000;
/** Two beats missed: a wire that was pulled says nothing. */
const SILENCE_MS = 2 * BEAT_MS + 1_000;

const listeners = new Set<Listener>();
/** the last of each, for whoever comes later */
const latest = new Map<Name, unknown>();
/** told when the bench computer is there again */
const backs = new Set<() => void>();
let source: EventSource | null = null;
let wasAway = false;
let silence: ReturnType<typeof setTimeout> | undefined;

function open(): void {
  const opened = new EventSource("/api/stream");
  source = opened;
  const heard = () => {
    clearTimeout(silence);
    silence = setTimeout(() => reopen(opened), SILENCE_MS);
  };
  for (const name of ["meter", "log", "beat"] as const satisfies readonly Name[])
    opened.addEventListener(name, (event: MessageEvent<string>) => {
      heard();
      const data: unknown = JSON.parse(event.data);
      if (name === "meter") latest.set(name, data);
      for (const listener of listeners) if (listener.name === name) listener.hear(data as never);
    });
  opened.addEventListener("open", () => {
    if (wasAway) for (const back of backs) back();
    wasAway = false;
  });
  opened.addEventListener("error", () => {
    wasAway = true;
    latest.clear();
    for (const listener of listeners) if (listener.name === "meter") listener.hear(null as never);
    // The browser tries again by itself, unless it was told that there is nothing here.
    if (opened.readyState === EventSource.CLOSED) setTimeout(() => reopen(opened), REOPEN_MS);
  });
  heard();
}

function reopen(old: EventSource): void {
  if (source !== old) return;
  wasAway = true;
  close();
  if (listeners.size > 0) open();
}

function close(): void {
  clearTimeout(silence);
  source?.close();
  source = null;
  latest.clear();
}

/** Hears every such news, the latest first where there was one; the returned function ends it. */
export function listen<N extends Name>(name: N, hear: (data: StreamNews[N]) => void): () => void {
  const listener: Listener = { name, hear };
  listeners.add(listener);
  if (source === null) open();
  const known = latest.get(name);
  if (known !== undefined) hear(known as StreamNews[N]);
  return () => {
    listeners.delete(listener);
    if (listeners.size === 0) close();
  };
}

/** Is told whenever the bench computer is there again after it was away; the returned function ends it. */
export function listenBack(back: () => void): () => void {
  backs.add(back);
  return () => void backs.delete(back);
}

/** The meter on the wire; null while the bench computer is away. */
export function useMeter(): MeterNow | null {
  const [now, setNow] = useState<MeterNow | null>(null);
  useEffect(() => listen("meter", setNow), []);
  return now;
}
