/**
 * The scanner's frames: a source gives grey squares one after the other. This one is the phone's camera;
 * a test may put another in its place.
 */
import { make } from "../../make.js";
import { squareOf, toGrey } from "./grey.js";

/** Asked of the camera: the one at the back, with enough pixels for a dense symbol (house rule). */
const WISH = { audio: false, video: { facingMode: { ideal: "environment" }, width: { ideal: 1280 }, height: { ideal: 720 } } };

/**
 * Opens the camera and shows it in `video`.
 * @returns {Promise<{next: () => Promise<{grey: Uint8Array, side: number}|null>, stop: () => void}>}
 *   `next` gives null once it is stopped
 * @throws {"none"|"refused"} why there is no camera
 */
export async function openCamera(video) {
  const stream = await openStream();
  const canvas = make("canvas");
  const pen = canvas.getContext("2d", { willReadFrequently: true, alpha: false });
  let open = true;
  video.srcObject = stream;
  await video.play().catch(() => {});
  return {
    async next() {
      while (open) {
        await newPicture(video);
        if (open && video.videoWidth > 0) {
          const { left, top, side, to } = squareOf(video.videoWidth, video.videoHeight);
          if (canvas.width !== to) {
            canvas.width = to;
            canvas.height = to;
          }
          pen.drawImage(video, left, top, side, side, 0, 0, to, to);
          return { grey: toGrey(pen.getImageData(0, 0, to, to).data), side: to };
        }
      }
      return null;
    },
    stop() {
      open = false;
      stream.getTracks().forEach((track) => track.stop());
      video.srcObject = null;
    },
  };
}

async function openStream() {
  if (!navigator.mediaDevices?.getUserMedia) {
    throw "none";
  }
  try {
    return await navigator.mediaDevices.getUserMedia(WISH);
  } catch (error) {
    throw error?.name === "NotAllowedError" || error?.name === "SecurityError" ? "refused" : "none";
  }
}

/** Waits for the next picture; where the engine does not tell, for the next time the screen is drawn. */
function newPicture(video) {
  return new Promise((resolve) => {
    const settle = () => {
      clearTimeout(late);
      resolve();
    };
    // A camera that is covered or stopped gives no picture: then it is looked at again.
    const late = setTimeout(resolve, 500);
    video.requestVideoFrameCallback ? video.requestVideoFrameCallback(settle) : requestAnimationFrame(settle);
  });
}
