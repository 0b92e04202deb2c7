/** What is done with a paper: printed, saved as a file, copied into a messenger. */
import { useState } from "react";
import { said } from "../../messages/said.ts";
import type { Paper, PaperKind, PdfRequest } from "../../wire/paper-api.ts";
import { api } from "../api.ts";
import { saveBlob } from "../save-file.ts";
import { say } from "../say.ts";

interface Props {
  readonly paper: Paper;
  readonly kind: PaperKind;
  readonly size: PdfRequest["size"];
}

export function PaperKeys({ paper, kind, size }: Props) {
  const [outcome, setOutcome] = useState("");
  const pdf = () => {
    setOutcome(said`Making the PDF…`);
    api.paperPdf({ paper, size }).then(
      (file) => {
        saveBlob(`${kind}-${paper.language}.pdf`, file);
        setOutcome("");
      },
      (error: Error) => setOutcome(said`No PDF: ${error.message}. Printing from this browser still works.`),
    );
  };
  const text = paper.blocks.flatMap((block) => (block.block === "text" ? [block.text] : [])).join("\n");
  return (
    <div className="keys whole">
      {kind === "message" ? (
        <button
          type="button"
          className="primary"
          onClick={() => setOutcome(copied(text) ? said`Copied.` : said`Select the text and copy it.`)}
        >
          {say`Copy the text`}
        </button>
      ) : (
        <button type="button" className="primary" onClick={() => print()}>
          {say`Print`}
        </button>
      )}
      <button type="button" onClick={pdf}>
        {say`Save as PDF`}
      </button>
      <p className="aside" role="status">
        {say(outcome)}
      </p>
    </div>
  );
}

/** Works on plain http too, where a page is given no clipboard of its own. */
function copied(text: string): boolean {
  const area = document.createElement("textarea");
  area.value = text;
  area.className = "for-readers";
  document.body.append(area);
  area.select();
  const done = document.execCommand("copy");
  area.remove();
  return done;
}
