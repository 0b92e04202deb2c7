/** Which part will do in the place that is to get a new one: what it must hold to, what many makers sell, and one candidate compared. */
import { useState } from "react";
import { plain, said } from "../../messages/said.ts";
import type { FitView, OfferAnswer } from "../../wire/fit-view.ts";
import { say, sayWith } from "../say.ts";
import { listed } from "../words.ts";
import { CandidateTable } from "./candidate-table.tsx";
import { FINDING_SIGNS } from "./finding-signs.ts";
import { OpenPoints } from "./open-points.tsx";
import { Pairs } from "./pairs.tsx";
import { SideBySideTable } from "./side-by-side.tsx";
import type { PartFit } from "./use-part-fit.ts";

export function WhichPart({ fit }: { readonly fit: PartFit }) {
  const [opened, setOpened] = useState(false);
  return (
    <details className="which-part" onToggle={(event) => setOpened(event.currentTarget.open)}>
      <summary>{say`Which part will do`}</summary>
      {opened && <WhichPartBody fit={fit} />}
    </details>
  );
}

function WhichPartBody({ fit: { view, typed, problem, type } }: { readonly fit: PartFit }) {
  if (view === null && problem !== null) return <p role="alert">{say(problem)}</p>;
  if (view === null) return <p className="aside">{say`Looking it up…`}</p>;
  return (
    <div className="which-part-body">
      {problem !== null && <p role="alert">{say(problem)}</p>}
      <Place view={view} />
      <Rules view={view} />
      <Customs view={view} />
      <Offers offers={view.offers} />
      {view.sideBySide !== null && <SideBySideTable compared={view.sideBySide} />}
      <section aria-label={say`Compare one`}>
        <h3>{say`Compare one, from its data sheet`}</h3>
        <FillIn
          offers={[...view.atHand, ...view.offers]}
          onFill={(candidate) => type({ ...typed, candidate })}
        />
        <CandidateTable view={view} typed={typed} onType={type} />
        {view.candidate !== null && <CandidateVerdict candidate={view.candidate} />}
      </section>
    </div>
  );
}

function Place({ view }: { readonly view: FitView }) {
  const beside = [
    view.parallel.length > 0 ? say`It shares its current with ${listed(view.parallel)}.` : "",
    view.alike.length > 0 ? say`It is one of a set with ${listed(view.alike)}.` : "",
  ];
  return (
    <p>
      {sayWith`${<span className="ref">{view.part}</span>} is the ${say(view.role)}.`}{" "}
      {beside.filter((one) => one !== "").join(" ")}
    </p>
  );
}

function Rules({ view }: { readonly view: FitView }) {
  return (
    <section aria-label={say`What it must hold to`}>
      <h3>{say`What it must hold to here`}</h3>
      <Pairs
        pairs={view.rules.map((rule) => ({
          head: rule.wants,
          text: rule.why,
          aside: rule.source === null ? rule.mark : said`${rule.mark}: ${rule.source}`,
        }))}
      />
    </section>
  );
}

/** What is said in the trade of this role, and wrong. */
function Customs({ view }: { readonly view: FitView }) {
  const customs = [...new Set(view.rules.flatMap(({ custom }) => custom ?? []))];
  if (customs.length === 0) return null;
  return (
    <section aria-label={say`Dangerous customs`}>
      <h3>{say`Often said, and wrong`}</h3>
      <ul className="cautions">
        {customs.map((custom) => (
          <li key={custom}>{say`“${custom}”`}</li>
        ))}
      </ul>
    </section>
  );
}

function Offers({ offers }: { readonly offers: readonly OfferAnswer[] }) {
  if (offers.length === 0) return null;
  return (
    <section aria-label={say`Types many makers sell`}>
      <h3>{say`Types many makers sell`}</h3>
      <ul className="plain">
        {offers.map((offer) => (
          <li key={offer.name}>
            <b>{offer.name}</b>: {say`${offer.fits}.`} <OpenPoints findings={offer.findings} />
          </li>
        ))}
      </ul>
    </section>
  );
}

interface FillInProps {
  readonly offers: readonly OfferAnswer[];
  onFill(ratings: Readonly<Record<string, string>>): void;
}

/** The ratings of a part whose figures are known, put into the table beside the original's. */
function FillIn({ offers, onFill }: FillInProps) {
  if (offers.length === 0) return null;
  const known = new Map(offers.map((offer) => [offer.name, offer.ratings]));
  return (
    <fieldset className="filters">
      <legend className="aside">{say`Fill in one that is known, or type`}</legend>
      {[...known].map(([name, ratings]) => (
        <button
          type="button"
          className="small"
          key={name}
          onClick={() =>
            onFill(Object.fromEntries(ratings.map((rating) => [rating.name, plain(rating.text)])))
          }
        >
          {name}
        </button>
      ))}
    </fieldset>
  );
}

function CandidateVerdict({ candidate }: { readonly candidate: OfferAnswer }) {
  const kept = candidate.findings.filter(({ says }) => says === "meets");
  return (
    <div role="status" className="fit-verdict" data-fits={plain(candidate.fits)}>
      <p>{sayWith`The candidate: ${<b>{say(candidate.fits)}</b>}.`}</p>
      <ul className="plain">
        {candidate.findings
          .filter(({ says }) => says !== "meets")
          .map((finding) => (
            <li key={finding.rule}>
              <b>{say`${FINDING_SIGNS[finding.says]}.`}</b>{" "}
              {finding.says === "open" ? say(finding.words) : say`${finding.words}: ${finding.why}`}
              {finding.custom !== null && ` ${say`(“${finding.custom}” is wrong)`}`}
            </li>
          ))}
      </ul>
      {kept.length > 0 && <p className="aside">{say`Kept: ${listed(kept.map(({ rule }) => say(rule)))}.`}</p>}
    </div>
  );
}
