/** What is done with a paper: printed, saved as a file, copied into a messenger. */
import { useState } from "react";
import { said } from "../../messages/said.ts";
import type { Paper, PaperKind, PdfRequest } from "../../wire/paper-api.ts";
import { api } from "../api.ts";
import type { JobPicture } from "../keeper.ts";
import { saveBlob } from "../save-file.ts";
import { say } from "../say.ts";

interface Props {
  readonly paper: Paper;
  readonly kind: PaperKind;
  readonly size: PdfRequest["size"];
  readonly job: string;
  readonly pictures: readonly JobPicture[];
}

export function PaperKeys({ paper, kind, size, job, pictures }: Props) {
  const [outcome, setOutcome] = useState("");
  const pdf = () => {
    setOutcome(said`Making the PDF…`);
    const ids = pictures.slice(0, picturesShown(paper)).map(({ id }) => id);
    api.paperPdf({ paper, size, ...(ids.length === 0 ? {} : { pictures: { job, ids } }) }).then(
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
      {kind === "message" && pictures[0] !== undefined && (
        <GivePicture address={pictures[0].address} text={text} onSaid={setOutcome} />
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

/** How many of the job's pictures stand on a paper. */
function picturesShown({ blocks }: Paper): number {
  return Math.max(0, ...blocks.map((block) => (block.block === "pictures" ? block.captions.length : 0)));
}

interface GivePictureProps {
  readonly address: string;
  readonly text: string;
  onSaid(words: string): void;
}

/** The picture that goes with the message: handed to the messenger with the text where the browser can, else saved to be attached. */
function GivePicture({ address, text, onSaid }: GivePictureProps) {
  const give = async () => {
    const data = await (await fetch(address)).blob();
    const name = `board.${data.type === "image/png" ? "png" : "jpg"}`;
    const shared = { text, files: [new File([data], name, { type: data.type })] };
    if (navigator.canShare?.(shared) !== true) {
      saveBlob(name, data);
      return say`Saved: attach it to the message.`;
    }
    try {
      await navigator.share(shared);
      return "";
    } catch {
      // whoever shares may think better of it
      return "";
    }
  };
  return (
    <button
      type="button"
      onClick={() => give().then(onSaid, () => onSaid(say`The bench computer does not answer: no picture.`))}
    >
      {say`Share or save the picture`}
    </button>
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
