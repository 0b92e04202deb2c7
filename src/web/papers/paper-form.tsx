/** Which paper, for whom, in which language and on which sheet. */
import type { ReactNode } from "react";
import { LANGUAGES } from "../../messages/language.ts";
import { said } from "../../messages/said.ts";
import type { PaperKind } from "../../wire/paper-api.ts";
import { go } from "../route.ts";
import { say } from "../say.ts";
import type { PaperChoice, PaperNames } from "./paper-choice.ts";

const KINDS: readonly { readonly kind: PaperKind; readonly words: string }[] = [
  { kind: "label", words: said`Board label` },
  { kind: "sheet", words: said`Bench sheet` },
  { kind: "report", words: said`Customer’s report` },
  { kind: "slip", words: said`Fitter’s slip` },
  { kind: "message", words: said`Short message` },
  { kind: "quote", words: said`Quote` },
  { kind: "bill", words: said`Bill` },
];

interface Props {
  readonly id: string;
  readonly kind: PaperKind;
  readonly choice: PaperChoice;
  readonly names: PaperNames;
  /** the shop's terms of warranty, in its own words */
  readonly warranty: string;
  onName(change: Partial<PaperNames>): void;
  onChoose(change: Partial<PaperChoice>): void;
  onWarranty(warranty: string): void;
  /** what is done with the paper */
  readonly children: ReactNode;
}

export function PaperForm({ children, ...props }: Props) {
  return (
    <form
      className="paper-form not-printed"
      aria-label={say`Which paper`}
      onSubmit={(event) => event.preventDefault()}
    >
      <Which {...props} />
      <ForWhom {...props} />
      {children}
    </form>
  );
}

function Which({ id, kind, choice, onChoose }: Omit<Props, "children">) {
  return (
    <>
      <label className="entry whole">
        {say`Paper`}
        <select value={kind} onChange={(event) => go(`#/job/${id}/papers/${event.target.value}`)}>
          {KINDS.map((one) => (
            <option key={one.kind} value={one.kind}>
              {say(one.words)}
            </option>
          ))}
        </select>
      </label>
      <label className="entry">
        {say`Language`}
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
        {say`Sheet`}
        <select
          value={choice.size}
          onChange={(event) => onChoose({ size: event.target.value as PaperChoice["size"] })}
        >
          <option value="a4">A4</option>
          <option value="letter">{say`Letter`}</option>
          <option value="label">{say`Label`}</option>
        </select>
      </label>
    </>
  );
}

function ForWhom({ kind, names, warranty, onName, onWarranty }: Omit<Props, "children">) {
  return (
    <>
      <label className="entry">
        {say`For whom`}
        <input
          autoComplete="off"
          maxLength={200}
          value={names.to}
          onChange={(event) => onName({ to: event.target.value })}
        />
      </label>
      <label className="entry">
        {say`Number`}
        <input
          autoComplete="off"
          maxLength={40}
          value={names.number}
          onChange={(event) => onName({ number: event.target.value })}
        />
      </label>
      {kind === "report" && (
        <label className="entry whole">
          {say`Terms of warranty, as your shop has them`}
          <textarea
            rows={2}
            maxLength={2000}
            value={warranty}
            onChange={(event) => onWarranty(event.target.value)}
          />
        </label>
      )}
    </>
  );
}
