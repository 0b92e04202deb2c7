/** The papers of a job: which one, in which language, on which sheet; shown as it is printed. */
import { useEffect, useState } from "react";
import { LANGUAGES } from "../../messages/language.ts";
import { paperCatalogue } from "../../messages/paper-catalogue.ts";
import type { Paper, PaperHead, PaperKind } from "../../wire/paper-api.ts";
import { picturesOf } from "../keeper.ts";
import { shopTyped } from "../money/shop-terms.ts";
import { go } from "../route.ts";
import { OpenedJob } from "../shell/opened-job.tsx";
import type { OpenJob } from "../use-job.ts";
import { keepPaperChoice, type PaperChoice, paperChoice } from "./paper-choice.ts";
import { PaperKeys } from "./paper-keys.tsx";
import { PaperView } from "./paper-view.tsx";

const KINDS: readonly { readonly kind: PaperKind; readonly words: string }[] = [
  { kind: "label", words: "Label for the board" },
  { kind: "sheet", words: "Bench sheet" },
  { kind: "report", words: "Report to the customer" },
  { kind: "slip", words: "Slip for the fitter" },
  { kind: "message", words: "Short message" },
  { kind: "quote", words: "Quote" },
  { kind: "bill", words: "Bill" },
];

interface Props {
  readonly id: string;
  readonly kind: PaperKind;
}

export function PapersScreen({ id, kind }: Props) {
  const [choice, setChoice] = useState<PaperChoice | null>(null);
  useEffect(() => void paperChoice().then(setChoice), []);
  if (choice === null) return null;
  const choose = (change: Partial<PaperChoice>) => {
    const chosen = { ...choice, ...change };
    setChoice(chosen);
    // What a browser does not keep is chosen again next time.
    keepPaperChoice(chosen).catch(() => undefined);
  };
  return (
    <OpenedJob id={id}>
      {(open) => <Papers open={open} kind={kind} choice={choice} onChoose={choose} />}
    </OpenedJob>
  );
}

interface PapersProps {
  readonly open: OpenJob;
  readonly kind: PaperKind;
  readonly choice: PaperChoice;
  onChoose(change: Partial<PaperChoice>): void;
}

function Papers({ open, kind, choice, onChoose }: PapersProps) {
  const [to, setTo] = useState("");
  const [number, setNumber] = useState("");
  const [pictures, setPictures] = useState<readonly string[]>([]);
  useEffect(() => void picturesOf(open.id).then(({ kept }) => setPictures(kept)), [open.id]);
  const { paper, problem } = usePaper(open, kind, choice, to, number);
  return (
    <div className="paper-screen">
      <style>{pageRule(choice.size)}</style>
      <nav className="not-printed" aria-label="Job">
        <button type="button" className="quiet" onClick={() => go(`#/job/${open.id}`)}>
          Back to the bench
        </button>
      </nav>
      <form
        className="paper-form not-printed"
        aria-label="Which paper"
        onSubmit={(event) => event.preventDefault()}
      >
        <label className="entry">
          Paper
          <select value={kind} onChange={(event) => go(`#/job/${open.id}/papers/${event.target.value}`)}>
            {KINDS.map((one) => (
              <option key={one.kind} value={one.kind}>
                {one.words}
              </option>
            ))}
          </select>
        </label>
        <label className="entry">
          Language
          <select
            value={choice.language}
            onChange={(event) => {
              const chosen = LANGUAGES.find(({ language }) => language === event.target.value);
              if (chosen !== undefined) onChoose({ language: chosen.language });
            }}
          >
            {LANGUAGES.map(({ language, name }) => (
              <option key={language} value={language} lang={language}>
                {name}
              </option>
            ))}
          </select>
        </label>
        <label className="entry">
          Sheet
          <select
            value={choice.size}
            onChange={(event) => onChoose({ size: event.target.value as PaperChoice["size"] })}
          >
            <option value="a4">A4</option>
            <option value="letter">Letter</option>
            <option value="label">Label, 100 by 62 mm</option>
          </select>
        </label>
        <label className="entry">
          To
          <input
            autoComplete="off"
            maxLength={200}
            value={to}
            onChange={(event) => setTo(event.target.value)}
          />
        </label>
        <label className="entry">
          Number
          <input
            autoComplete="off"
            maxLength={40}
            value={number}
            onChange={(event) => setNumber(event.target.value)}
          />
        </label>
        {kind === "report" && (
          <label className="entry whole">
            Terms of warranty, as your shop has them
            <textarea
              rows={2}
              maxLength={2000}
              value={choice.warranty}
              onChange={(event) => onChoose({ warranty: event.target.value })}
            />
          </label>
        )}
        {paper !== null && <PaperKeys paper={paper} kind={kind} size={choice.size} />}
      </form>
      {problem !== null && (
        <p className="problem not-printed" role="alert">
          {problem}
        </p>
      )}
      <main className={`paper paper-${choice.size}`}>
        {paper === null ? (
          <p role="status">Working it out…</p>
        ) : (
          <PaperView paper={paper} pictures={pictures} />
        )}
      </main>
    </div>
  );
}

function pageRule(size: PaperChoice["size"]): string {
  return size === "label"
    ? "@page { size: 100mm 62mm; margin: 4mm; }"
    : `@page { size: ${size === "a4" ? "A4" : "letter"}; margin: 15mm; }`;
}

interface Made {
  readonly paper: Paper | null;
  readonly problem: string | null;
}

/** The paper for what is chosen now; an older one stays on the screen until it is there. */
function usePaper(
  { id, job, paper: make }: OpenJob,
  kind: PaperKind,
  { language, warranty }: PaperChoice,
  to: string,
  number: string,
): Made {
  const [made, setMade] = useState<Made>({ paper: null, problem: null });
  const [shop, setShop] = useState<string | null>(null);
  useEffect(() => void shopTyped().then(({ name }) => setShop(name)), []);
  const title = job === null || job === "loading" ? null : job.title;
  const practice = job !== null && job !== "loading" && job.practice !== null;
  useEffect(() => {
    if (shop === null) return;
    const text = (typed: string) => (typed.trim() === "" ? null : typed.trim());
    const head: PaperHead = {
      day: new Date().toLocaleDateString("sv-SE"),
      from: text(shop),
      to: text(to),
      number: text(number),
      jobTitle: title,
      opens: `${location.origin}${location.pathname}#/job/${id}`,
      warranty: text(warranty),
      practice,
    };
    let waiting = true;
    paperCatalogue(language)
      .then((catalogue) => make(kind, head, catalogue))
      .then(
        (paper) => waiting && setMade({ paper, problem: null }),
        (error: Error) => waiting && setMade({ paper: null, problem: error.message }),
      );
    return () => {
      waiting = false;
    };
  }, [make, kind, language, warranty, to, number, shop, title, practice, id]);
  return made;
}
