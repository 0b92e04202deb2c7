/** Chooses the screen. */
import { BenchScreen } from "./bench/bench-screen.tsx";
import { BoardScreen } from "./boards/board-screen.tsx";
import { BoardsScreen } from "./boards/boards-screen.tsx";
import { DrawerScreen } from "./drawer/drawer-screen.tsx";
import { ThisBenchScreen } from "./hands/this-bench-screen.tsx";
import { IntakeScreen } from "./intake/intake-screen.tsx";
import { JobsScreen } from "./jobs/jobs-screen.tsx";
import { LearntScreen } from "./learnt/learnt-screen.tsx";
import { MeterScreen } from "./meter/meter-screen.tsx";
import { BillScreen } from "./money/bill-screen.tsx";
import { QuoteScreen } from "./money/quote-screen.tsx";
import { ShopScreen } from "./money/shop-screen.tsx";
import { useRoute } from "./route.ts";

export function App() {
  const route = useRoute();
  if (route.screen === "job") return <BenchScreen key={route.id} id={route.id} />;
  if (route.screen === "learnt") return <LearntScreen />;
  if (route.screen === "boards") return <BoardsScreen />;
  if (route.screen === "board") return <BoardScreen key={route.id} id={route.id} />;
  if (route.screen === "quote") return <QuoteScreen key={route.id} id={route.id} />;
  if (route.screen === "bill") return <BillScreen key={route.id} id={route.id} />;
  if (route.screen === "meter") return <MeterScreen />;
  if (route.screen === "shop") return <ShopScreen />;
  if (route.screen === "this-bench") return <ThisBenchScreen />;
  if (route.screen === "drawer") return <DrawerScreen />;
  return route.screen === "new" ? <IntakeScreen describing={route.describing} /> : <JobsScreen />;
}
