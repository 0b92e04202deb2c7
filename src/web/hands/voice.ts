/** Spoken instructions in the page's language, by the browser's own voice; off until somebody turns them on. */
import { useEffect, useRef } from "react";
import { language } from "../say.ts";
import { handsSettings } from "./hands-settings.ts";
import { spokenWords } from "./spoken-words.ts";

export function canSpeak(): boolean {
  return "speechSynthesis" in globalThis && "SpeechSynthesisUtterance" in globalThis;
}

/** Says a line at once; what was being said stops, because it is about the step before. */
export function sayAloud(line: string): void {
  if (!canSpeak() || line === "") return;
  speechSynthesis.cancel();
  const utterance = new SpeechSynthesisUtterance(spokenWords(line));
  utterance.lang = language();
  speechSynthesis.speak(utterance);
}

/** Says each step when it comes up, where the voice is on; gives back what says it again, asked for. */
export function useSpokenStep(step: string): () => void {
  const now = useRef(step);
  now.current = step;
  useEffect(() => {
    if (handsSettings().speaks) sayAloud(step);
  }, [step]);
  useEffect(
    () => () => {
      if (canSpeak()) speechSynthesis.cancel();
    },
    [],
  );
  return () => sayAloud(now.current);
}
