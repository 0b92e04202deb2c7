/** After a practice job: what the board came with, and what is still on it. */
import { useEffect, useState } from "react";
import type { NamedFault, HiddenFaults as Told } from "../engine-messages.ts";
import { say } from "../say.ts";
import type { OpenJob } from "../use-job.ts";

export function HiddenFaults({ open }: { readonly open: OpenJob }) {
  const [told, setTold] = useState<Told | null>(null);
  const { hidden, behind } = open;
  useEffect(() => {
    if (behind) return;
    let left = false;
    hidden().then(
      (faults) => left || setTold(faults),
      () => left || setTold(null),
    );
    return () => {
      left = true;
    };
  }, [hidden, behind]);
  if (told === null) return null;
  return (
    <section className="gate hidden-faults" aria-label={say`What the practice board had`}>
      <h3>{say`What the practice board came with`}</h3>
      <FaultList faults={told.arrived} />
      <h3>{told.left.length === 0 ? say`Nothing is faulty on it now` : say`Still on it now`}</h3>
      <FaultList faults={told.left} />
    </section>
  );
}

function FaultList({ faults }: { readonly faults: readonly NamedFault[] }) {
  if (faults.length === 0) return null;
  return (
    <ul className="plain">
      {faults.map(({ fault, words }) => (
        <li key={fault} data-fault={fault}>
          {say(words)}
        </li>
      ))}
    </ul>
  );
}
