/** Chooses the screen. */
import { lazy, Suspense, useSyncExternalStore } from "react";
import { BenchScreen } from "./bench/bench-screen.tsx";
import { BoardScreen } from "./boards/board-screen.tsx";
import { BoardsScreen } from "./boards/boards-screen.tsx";
import { DrawerScreen } from "./drawer/drawer-screen.tsx";
import { ThisBenchScreen } from "./hands/this-bench-screen.tsx";
import { IntakeScreen } from "./intake/intake-screen.tsx";
import { JobsScreen } from "./jobs/jobs-screen.tsx";
import { LearntScreen } from "./learnt/learnt-screen.tsx";
import { MeterScreen } from "./meter/meter-screen.tsx";
import { QuoteScreen } from "./money/quote-screen.tsx";
import { ShopScreen } from "./money/shop-screen.tsx";
import { useRoute } from "./route.ts";
import { language, onLanguage, say } from "./say.ts";

/** Papers and what they say are fetched when the first one is asked for. */
const PapersScreen = lazy(async () => ({
  default: (await import("./papers/papers-screen.tsx")).PapersScreen,
}));

/** Another language is another page: every screen is made anew. */
export function App() {
  return <Screen key={useSyncExternalStore(onLanguage, language)} />;
}

function Screen() {
  const route = useRoute();
  if (route.screen === "job") return <BenchScreen key={route.id} id={route.id} />;
  if (route.screen === "learnt") return <LearntScreen />;
  if (route.screen === "boards") return <BoardsScreen />;
  if (route.screen === "board") return <BoardScreen key={route.id} id={route.id} />;
  if (route.screen === "quote") return <QuoteScreen key={route.id} id={route.id} />;
  if (route.screen === "meter") return <MeterScreen />;
  if (route.screen === "papers")
    return (
      <Suspense fallback={<p role="status">{say`Fetching the papers…`}</p>}>
        <PapersScreen key={route.id} id={route.id} kind={route.kind} />
      </Suspense>
    );
  if (route.screen === "shop") return <ShopScreen />;
  if (route.screen === "this-bench") return <ThisBenchScreen />;
  if (route.screen === "drawer") return <DrawerScreen />;
  return route.screen === "new" ? <IntakeScreen describing={route.describing} /> : <JobsScreen />;
}
