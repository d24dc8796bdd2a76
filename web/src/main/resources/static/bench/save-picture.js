import { wrap } from './text-lines.js';

/**
 * A picture as a file that stands alone: no style sheet, no script, no outside resource.
 */

const NAMESPACE = 'http://www.w3.org/2000/svg';

/** Rim of ground around a saved picture, and size of its caption [px]. */
const RIM = 16;

const CAPTION = 16;

const CAPTION_LINES = 3;

/** Height of the caption's lines over their letters. */
const LEADING = 1.3;

/** Pixels of a PNG per pixel of the page. */
const SHARPNESS = 2;

/** Attributes that mean something to this page alone. */
const OURS = ['class', 'style', 'tabindex'];

/**
 * Saves a picture as a file.
 *
 * @param {SVGElement} picture as a drawing module made it
 * @param {string} name of the case and the picture; the speed that is shown is added
 * @param {string} kind svg or png
 * @param {string} [caption] under the picture, in place of its own
 * @returns {Promise<void>} settled once the file was handed to the browser
 */
export async function savePicture(picture, name, kind, caption) {
  const text = pictureText(picture, caption);
  const svg = new Blob([text], { type: 'image/svg+xml;charset=utf-8' });
  const file = pictureName(name, picture.getAttribute('data-speed') ?? '');
  download(kind === 'png' ? await toPng(svg) : svg, `${file}.${kind}`);
}

/**
 * A file name from what the picture shows: `light-carver-side-view-25-km-h`.
 *
 * @param {...string} parts such as the case's name with the picture's, the speed with its unit
 */
export function pictureName(...parts) {
  const words = parts
    .map((part) => part.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-+|-+$/g, '').slice(0, 60))
    .filter((part) => part !== '');
  return words.join('-') || 'picture';
}

/**
 * The text of an SVG file.
 *
 * @param {SVGElement} picture
 * @param {string} [caption]
 */
export function pictureText(picture, caption) {
  const { width, height } = sizeOf(picture);
  const copy = picture.cloneNode(true);
  for (const hidden of copy.querySelectorAll('[display="none"]')) {
    hidden.remove();
  }
  for (const element of [copy, ...copy.querySelectorAll('*')]) {
    OURS.forEach((attribute) => element.removeAttribute(attribute));
  }
  const words = caption ?? copy.getAttribute('data-caption') ?? '';
  const ground = copy.getAttribute('data-ground') ?? '#FFFFFF';
  const ink = copy.getAttribute('data-ink') ?? '#000000';
  const face = { size: CAPTION, font: copy.getAttribute('font-family') ?? 'sans-serif' };
  const lines = wrap(words, width, face, CAPTION_LINES);
  const wide = width + 2 * RIM;
  const high = height + 2 * RIM + LEADING * CAPTION * lines.length;
  const sheet = document.createElementNS(NAMESPACE, 'svg');
  const set = (element, attributes) => {
    for (const key in attributes) {
      element.setAttribute(key, String(attributes[key]));
    }
    return element;
  };
  const make = (name, attributes) => set(document.createElementNS(NAMESPACE, name), attributes);
  for (const { name, value } of [...copy.attributes]) {
    if (!['width', 'height', 'viewBox', 'xmlns'].includes(name)) {
      sheet.setAttribute(name, value);
    }
  }
  set(sheet, { width: wide, height: high, viewBox: `0 0 ${wide} ${high}` });
  for (const name of ['title', 'desc']) {
    const element = copy.querySelector(name);
    if (element) {
      sheet.append(element);
    }
  }
  sheet.append(make('rect', { x: 0, y: 0, width: wide, height: high, fill: ground }));
  const moved = make('g', { transform: `translate(${RIM} ${RIM})` });
  moved.append(...copy.childNodes);
  sheet.append(moved);
  lines.forEach((line, i) => {
    const text = make('text', {
      x: RIM, y: height + RIM + (LEADING * (i + 1) + 0.1) * CAPTION, fill: ink,
      'font-size': CAPTION,
    });
    text.textContent = line;
    sheet.append(text);
  });
  const markup = new XMLSerializer().serializeToString(sheet);
  return `<?xml version="1.0" encoding="UTF-8"?>\n${markup}\n`;
}

function sizeOf(picture) {
  return {
    width: Number(picture.getAttribute('width')), height: Number(picture.getAttribute('height')),
  };
}

async function toPng(svg) {
  const address = URL.createObjectURL(svg);
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(image.naturalWidth * SHARPNESS);
    canvas.height = Math.round(image.naturalHeight * SHARPNESS);
    canvas.getContext('2d').drawImage(image, 0, 0, canvas.width, canvas.height);
    const png = await new Promise((done) => canvas.toBlob(done, 'image/png'));
    if (!png) {
      throw new Error('the picture could not be turned into pixels');
    }
    return png;
  } finally {
    URL.revokeObjectURL(address);
  }
}

function download(blob, name) {
  const address = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser reads the file after the click has returned.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
