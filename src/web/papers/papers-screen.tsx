/** The papers of a job: which one, in which language, on which sheet; shown as it is printed. */
import { useEffect, useRef, useState } from "react";
import { paperCatalogue } from "../../messages/paper-catalogue.ts";
import type { Paper, PaperHead, PaperKind } from "../../wire/paper-api.ts";
import { type JobPicture, picturesOf } from "../keeper.ts";
import { go } from "../route.ts";
import { say } from "../say.ts";
import { OpenedJob } from "../shell/opened-job.tsx";
import { keepShop, sendShop, shopKept } from "../shop-keeper.ts";
import type { OpenJob } from "../use-job.ts";
import {
  keepPaperChoice,
  keepPaperNames,
  type PaperChoice,
  type PaperNames,
  paperChoice,
  paperNames,
} from "./paper-choice.ts";
import { PaperForm } from "./paper-form.tsx";
import { PaperKeys } from "./paper-keys.tsx";
import { PaperView } from "./paper-view.tsx";

interface Props {
  readonly id: string;
  readonly kind: PaperKind;
}

export function PapersScreen({ id, kind }: Props) {
  const [choice, setChoice] = useState<PaperChoice | null>(null);
  useEffect(() => void paperChoice().then(setChoice), []);
  if (choice === null) return null;
  const choose = (change: Partial<PaperChoice>) => {
    setChoice({ ...choice, ...change });
    // What a browser does not keep is chosen again next time.
    keepPaperChoice(change).catch(() => undefined);
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
  const [names, setNames] = useState<PaperNames | null>(null);
  useEffect(() => void paperNames(open.id).then(setNames), [open.id]);
  const [pictures, setPictures] = useState<readonly JobPicture[]>([]);
  useEffect(() => void picturesOf(open.id).then(({ kept }) => setPictures(kept)), [open.id]);
  const { shop, changeWarranty } = useShopOnPaper();
  const { paper, of, problem } = usePaper(open, kind, choice, names, shop, pictures.length);
  if (names === null) return null;
  const name = (change: Partial<PaperNames>) => {
    const named = { ...names, ...change };
    setNames(named);
    // As above.
    keepPaperNames(open.id, named).catch(() => undefined);
  };
  return (
    <div className="paper-screen">
      <style>{pageRule(choice.size)}</style>
      <nav className="not-printed" aria-label={say`Job`}>
        <button type="button" className="quiet" onClick={() => go(`#/job/${open.id}`)}>
          {say`Back to the bench`}
        </button>
      </nav>
      <PaperForm
        id={open.id}
        kind={kind}
        choice={choice}
        names={names}
        warranty={shop?.warranty ?? ""}
        onName={name}
        onChoose={onChoose}
        onWarranty={changeWarranty}
      >
        {paper !== null && of === kind && paper.language === choice.language && (
          <PaperKeys paper={paper} kind={kind} size={choice.size} job={open.id} pictures={pictures} />
        )}
      </PaperForm>
      {problem !== null && (
        <p className="problem not-printed" role="alert">
          {say(problem)}
        </p>
      )}
      <main className={`paper paper-${choice.size}`}>
        {paper === null ? (
          <p role="status">{say`Working it out…`}</p>
        ) : (
          <PaperView paper={paper} pictures={pictures.map(({ address }) => address)} />
        )}
      </main>
    </div>
  );
}

/** What a paper bears of the shop. */
interface ShopOnPaper {
  readonly name: string;
  readonly warranty: string;
}

/** Fingers rest before what they typed is sent. */
const REST_MS = 700;

/** The shop's name and warranty; what is typed of the latter is kept for every screen. */
function useShopOnPaper() {
  const [shop, setShop] = useState<ShopOnPaper | null>(null);
  const resting = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  // What waits goes later, when the bench computer is there or the words are such that it takes them.
  const send = () => void sendShop().catch(() => undefined);
  useEffect(() => {
    void shopKept().then(({ name, warranty = "" }) => setShop({ name, warranty }));
    return () => {
      clearTimeout(resting.current);
      void sendShop().catch(() => undefined);
    };
  }, []);
  const changeWarranty = (warranty: string) => {
    setShop({ name: shop?.name ?? "", warranty });
    clearTimeout(resting.current);
    keepShop({ warranty }).then(
      () => {
        resting.current = setTimeout(send, REST_MS);
      },
      // What a browser does not keep is typed again next time.
      () => undefined,
    );
  };
  return { shop, changeWarranty };
}

function pageRule(size: PaperChoice["size"]): string {
  return size === "label"
    ? "@page { size: 100mm 62mm; margin: 4mm; }"
    : `@page { size: ${size === "a4" ? "A4" : "letter"}; margin: 15mm; }`;
}

interface Made {
  readonly paper: Paper | null;
  /** the kind that it is of */
  readonly of: PaperKind | null;
  readonly problem: string | null;
}

/** The paper for what is chosen now; an older one stays on the screen until it is there. */
function usePaper(
  { id, job, paper: make }: OpenJob,
  kind: PaperKind,
  { language }: PaperChoice,
  names: PaperNames | null,
  shop: ShopOnPaper | null,
  pictures: number,
): Made {
  const [made, setMade] = useState<Made>({ paper: null, of: null, problem: null });
  const title = job === null || job === "loading" ? null : job.title;
  const practice = job !== null && job !== "loading" && job.practice !== null;
  useEffect(() => {
    if (shop === null || names === null) return;
    const text = (typed: string) => (typed.trim() === "" ? null : typed.trim());
    const head: PaperHead = {
      day: new Date().toLocaleDateString("sv-SE"),
      from: text(shop.name),
      to: text(names.to),
      number: text(names.number),
      jobTitle: title,
      opens: `${location.origin}${location.pathname}#/job/${id}`,
      warranty: text(shop.warranty),
      pictures,
      practice,
    };
    let waiting = true;
    paperCatalogue(language)
      .then((catalogue) => make(kind, head, catalogue))
      .then(
        (paper) => waiting && setMade({ paper, of: kind, problem: null }),
        (error: Error) => waiting && setMade({ paper: null, of: null, problem: error.message }),
      );
    return () => {
      waiting = false;
    };
  }, [make, kind, language, names, shop, title, practice, pictures, id]);
  return made;
}
