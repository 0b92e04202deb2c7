/** Chooses the screen. */
import { BenchScreen } from "./bench/bench-screen.tsx";
import { IntakeScreen } from "./intake/intake-screen.tsx";
import { JobsScreen } from "./jobs/jobs-screen.tsx";
import { LearntScreen } from "./learnt/learnt-screen.tsx";
import { useRoute } from "./route.ts";

export function App() {
  const route = useRoute();
  if (route.screen === "job") return <BenchScreen key={route.id} id={route.id} />;
  if (route.screen === "learnt") return <LearntScreen />;
  return route.screen === "new" ? <IntakeScreen describing={route.describing} /> : <JobsScreen />;
}
