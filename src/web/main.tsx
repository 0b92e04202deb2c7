/** Starts the page. */
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./app.tsx";
import { keepPageHere } from "./install.ts";
import { learnLanguage } from "./say.ts";
import "./style/ground.css";
import "./style/controls.css";
import "./style/screens.css";
import "./style/jobs.css";
import "./style/describe.css";
import "./style/boards.css";
import "./style/card.css";
import "./style/panels.css";
import "./style/power.css";
import "./style/charge.css";
import "./style/fit.css";
import "./style/learnt.css";
import "./style/beside.css";
import "./style/money.css";
import "./style/papers.css";
import "./style/drawer.css";
import "./style/wire.css";
import "./style/picture.css";
import "./style/hands.css";
import "./style/plots.css";

const page = document.getElementById("page");
if (page === null) throw new Error("index.html has no #page");
const root = createRoot(page);
learnLanguage().then(() =>
  root.render(
    <StrictMode>
      <App />
    </StrictMode>,
  ),
);
keepPageHere();
