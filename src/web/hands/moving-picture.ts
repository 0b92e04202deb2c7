/**
 * Where there is no wake lock (plain http, an older browser) a picture that moves keeps a screen on: a muted video of a canvas, made here.
 * It lies behind the page in its full size, because browsers keep a screen on for what is large and in view.
 */

/** The picture changes this often: a still one counts as paused. */
const CHANGE_MS = 1000;
const SIDE_PX = 16;

export interface MovingPicture {
  stop(): void;
}

/** Starts it; null where the browser has no such stream. Playing may be refused until the first tap: `play` is tried again then. */
export function startMovingPicture(): MovingPicture | null {
  const canvas = document.createElement("canvas");
  canvas.width = SIDE_PX;
  canvas.height = SIDE_PX;
  const brush = canvas.getContext("2d");
  if (brush === null || typeof canvas.captureStream !== "function") return null;
  const video = document.createElement("video");
  video.className = "moving-picture";
  video.muted = true;
  video.loop = true;
  video.playsInline = true;
  video.tabIndex = -1;
  video.setAttribute("aria-hidden", "true");
  let shade = 0;
  const paint = () => {
    shade = 1 - shade;
    brush.fillStyle = `rgb(${shade} ${shade} ${shade})`;
    brush.fillRect(0, 0, SIDE_PX, SIDE_PX);
  };
  paint();
  video.srcObject = canvas.captureStream();
  document.body.append(video);
  const play = () => void video.play().catch(() => undefined);
  const timer = setInterval(paint, CHANGE_MS);
  play();
  addEventListener("pointerdown", play);
  addEventListener("keydown", play);
  document.addEventListener("visibilitychange", play);
  return {
    stop: () => {
      clearInterval(timer);
      removeEventListener("pointerdown", play);
      removeEventListener("keydown", play);
      document.removeEventListener("visibilitychange", play);
      video.remove();
    },
  };
}
