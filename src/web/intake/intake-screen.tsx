/** A new job on one screen, in under a minute. */
import { useEffect, useState } from "react";
import { said, saidCount } from "../../messages/said.ts";
import { DescribeScreen } from "../describe/describe-screen.tsx";
import { benchEquipment, keepBenchEquipment } from "../hands/bench-equipment.ts";
import { EquipmentKeys } from "../hands/equipment-keys.tsx";
import { newId } from "../job-event.ts";
import { startJob } from "../keeper.ts";
import { useLessons } from "../learnt/use-lessons.ts";
import { type BenchLessons, lessonsAtHand } from "../lessons.ts";
import { shopTyped } from "../money/shop-terms.ts";
import { go } from "../route.ts";
import { forms, say, sayWith } from "../say.ts";
import { SafetyNotice } from "../shell/safety-notice.tsx";
import { useEngine } from "../use-engine.ts";
import { BoardChoice } from "./board-choice.tsx";
import { Choices } from "./choices.tsx";
import { EarlierJobs } from "./earlier-jobs.tsx";
import {
  CAUSES,
  EQUIPMENT,
  FIRST_INTAKE,
  firstEvents,
  headerOf,
  type Intake,
  type IntakeProps,
  missing,
  SYMPTOMS,
  seedOf,
  titleOf,
} from "./intake.ts";
import { PartMarks } from "./part-marks.tsx";
import { Pictures } from "./pictures.tsx";
import { TermsFields } from "./terms-fields.tsx";

/** `describing`: the questions about a board of one's own stand in front of it. */
export function IntakeScreen({ describing }: { readonly describing: boolean }) {
  const [intake, setIntake] = useState<Intake>(FIRST_INTAKE);
  const [problem, setProblem] = useState<string | null>(null);
  const engine = useEngine();
  // Closed jobs that nobody has read yet are read while the intake is filled in.
  const { lessons } = useLessons(engine);
  const [asked, setAsked] = useState(false);
  useEffect(
    () =>
      void benchEquipment().then((kept) => {
        setAsked(kept !== null);
        if (kept !== null) setIntake((before) => ({ ...before, equipment: new Set(kept) }));
      }),
    [],
  );
  useEffect(() => void shopTyped().then(({ terms }) => setIntake((before) => ({ ...before, terms }))), []);
  const change = (part: Partial<Intake>) => {
    setIntake((before) => ({ ...before, ...part }));
    setProblem(null);
  };
  const start = async () => {
    const lacking = missing(intake);
    if (lacking !== null) return setProblem(lacking);
    const id = newId();
    const practice = intake.practice ? { seed: seedOf(intake) } : null;
    const called = titleOf(intake);
    const title = called === null ? {} : { title: called };
    const header = headerOf(intake);
    // Practice keeps the tables' figures, so that a number hides the same faults everywhere.
    const figures =
      practice !== null || engine === null
        ? null
        : await engine.figures(await lessonsAtHand(), header).catch(() => null);
    const job = figures === null ? header : { ...header, learned: figures };
    if (!asked) await keepBenchEquipment(intake.equipment);
    await startJob({ id, ...title, practice, job }, firstEvents(intake), intake.pictures);
    go(`#/job/${id}`);
  };
  if (describing) return <DescribeScreen intake={intake} change={change} />;
  return (
    <div className="intake">
      <header className="bench-bar">
        <button type="button" className="quiet" onClick={() => go("#/")}>
          {say`Jobs`}
        </button>
        <h1>{say`New job`}</h1>
      </header>
      <main>
        <SafetyNotice />
        <IntakeFields intake={intake} change={change} asked={asked} />
        {!intake.practice && lessons !== null && <Taught lessons={lessons} />}
        <div className="start-bar">
          {problem !== null && (
            <p role="alert" className="entry-problem">
              {say(problem)}
            </p>
          )}
          <button type="button" className="primary tall" onClick={() => void start()}>
            {intake.practice ? say`Start the practice job` : say`Start the job`}
          </button>
        </div>
      </main>
    </div>
  );
}

function Taught({ lessons }: { readonly lessons: BenchLessons }) {
  const read = lessons.jobs.filter(({ lesson }) => lesson !== null).length;
  if (read + lessons.toRead === 0) return null;
  return (
    <p className="aside">
      {say(
        lessons.toRead === 0
          ? saidCount(
              read,
              "Likelihoods start from what 1 closed job taught.",
              "Likelihoods start from what {0} closed jobs taught.",
            )
          : saidCount(
              read,
              "Likelihoods start from what 1 closed job taught, {1} more being read.",
              "Likelihoods start from what {0} closed jobs taught, {1} more being read.",
              lessons.toRead,
            ),
      )}
    </p>
  );
}

/** `asked`: the list of what this bench has was made before. */
interface FieldsProps extends IntakeProps {
  readonly asked: boolean;
}

function IntakeFields({ intake, change, asked }: FieldsProps) {
  return (
    <>
      <PracticeSwitch intake={intake} change={change} />
      <BoardChoice intake={intake} change={change} />
      {intake.board !== null && <EarlierJobs board={intake.board} />}
      <Choices
        title={say`What happened to it`}
        choices={CAUSES.map(({ cause, words, hint }) => ({
          value: cause,
          words: say(words),
          hint: say(hint),
        }))}
        value={intake.cause}
        onValue={(cause) => change({ cause })}
      />
      {intake.cause === "water" && (
        <Choices
          title={say`Was it powered while wet?`}
          choices={WET.map(({ value, words }) => ({ value, words: say(words) }))}
          value={intake.poweredWet}
          onValue={(poweredWet) => change({ poweredWet: poweredWet as Intake["poweredWet"] })}
        />
      )}
      <Choices
        title={say`What it does`}
        choices={SYMPTOMS.map(({ symptom, words }) => ({ value: symptom, words: say(words) }))}
        value={intake.symptom}
        onValue={(symptom) => change({ symptom })}
      />
      <PartMarks intake={intake} change={change} />
      <fieldset className="whose">
        <legend>{say`To find it by (optional)`}</legend>
        <label className="entry">
          {say`Unit`}
          <input
            autoComplete="off"
            maxLength={80}
            placeholder={say`what it came out of`}
            value={intake.unit}
            onChange={(event) => change({ unit: event.target.value })}
          />
        </label>
        <label className="entry">
          {say`Customer`}
          <input
            autoComplete="off"
            maxLength={80}
            value={intake.customer}
            onChange={(event) => change({ customer: event.target.value })}
          />
        </label>
      </fieldset>
      <div className="folded">
        <EquipmentTicks intake={intake} change={change} asked={asked} />
        <TermsFields intake={intake} change={change} />
        <Pictures intake={intake} change={change} />
      </div>
    </>
  );
}

const WET = [
  { value: "yes", words: said`Yes` },
  { value: "no", words: said`No` },
  { value: "unknown", words: said`Nobody knows` },
];

function EquipmentTicks({ intake, change, asked }: FieldsProps) {
  const here = EQUIPMENT.filter(({ name }) => intake.equipment.has(name)).map(({ words }) => say(words));
  return (
    <details key={String(asked)} open={!asked}>
      <summary>
        <span>
          {say`On this bench`} <small>{forms().list([say`a meter`, ...here])}</small>
        </span>
      </summary>
      <p className="aside">
        {asked
          ? sayWith`For this job alone. For every job: ${<a href="#/bench">{say`This bench`}</a>}.`
          : say`Asked once: only what is marked here is ever proposed. It is kept for every job.`}
      </p>
      <EquipmentKeys equipment={intake.equipment} onEquipment={(equipment) => change({ equipment })} />
    </details>
  );
}

function PracticeSwitch({ intake, change }: IntakeProps) {
  return (
    <fieldset className="practice-switch" data-on={intake.practice}>
      <legend>{say`Practice`}</legend>
      <label className="tick">
        <input
          type="checkbox"
          checked={intake.practice}
          onChange={(event) => change({ practice: event.target.checked })}
        />
        {say`No board at hand: hide faults, and let a simulated board answer`}
      </label>
      {intake.practice && (
        <label className="entry">
          {say`Practice number: the same number hides the same faults; leave it empty for any`}
          <input
            inputMode="numeric"
            autoComplete="off"
            value={intake.seed}
            onChange={(event) => change({ seed: event.target.value })}
          />
        </label>
      )}
    </fieldset>
  );
}
