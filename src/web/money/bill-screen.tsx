/** The bill, as it is printed. */
import type { BenchView } from "../../wire/bench-view.ts";
import { OpenedJob } from "../shell/opened-job.tsx";
import type { OpenJob } from "../use-job.ts";
import { MoneyLines } from "./money-lines.tsx";
import { PaperFrame } from "./paper-frame.tsx";

export function BillScreen({ id }: { readonly id: string }) {
  return <OpenedJob id={id}>{(open, view) => <BillPaper open={open} view={view} />}</OpenedJob>;
}

function BillPaper({ open, view }: { readonly open: OpenJob; readonly view: BenchView }) {
  const { bill, currency } = view.money;
  const job = open.job === "loading" ? null : open.job;
  const tax =
    bill.taxPercent > 0
      ? [
          { words: "net", amount: bill.net },
          { words: `tax, ${bill.taxPercent} %`, amount: bill.tax },
        ]
      : [];
  return (
    <PaperFrame id={open.id} title={bill.soFar ? "Bill so far" : "Bill"}>
      <p>
        {view.boardName}
        {job !== null && job.title !== view.boardName && (
          <>
            <br />
            <span className="aside">{job.title}</span>
          </>
        )}
      </p>
      <p className="figure">{new Date().toLocaleDateString("en-GB", { dateStyle: "long" })}</p>
      {job?.practice != null && <p className="practice-mark of-paper">Practice: nobody owes this</p>}
      <MoneyLines
        caption="What is billed"
        lines={bill.lines.map((line) => ({
          ...line,
          words: line.minutes === null ? line.words : `${line.words}, ${line.minutes} min`,
        }))}
        sums={[...tax, { words: `to pay, ${currency}`, amount: bill.total }]}
      />
      <p>{bill.basis}</p>
      <button type="button" className="primary tall not-printed" onClick={() => print()}>
        Print
      </button>
    </PaperFrame>
  );
}
