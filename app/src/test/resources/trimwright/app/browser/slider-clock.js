/**
 * A stopwatch put into the page from outside. A move begins with the time stamp that the browser
 * itself gave to the key press or the pointer's move, before any script saw it. It ends in the first
 * task after the frame in which the page first shows that move or a later one: by then the browser
 * has run styles, layout and paint for that frame and handed the picture on.
 */
const root = document.documentElement;
const channel = new MessageChannel();
const clock = {
  /** Finished moves, from event to painted frame [ms]. */
  times: [],
  /** Times that an older state replaced a newer one. */
  backwards: 0,
  /** Whether the page said that it is catching up. */
  saidSo: false,
  /** Moves that are not on the screen yet. */
  open: [],
};
let began = 0;
let asked = 0;
let drawn = 0;

for (const kind of ['keydown', 'pointerdown', 'pointermove']) {
  document.addEventListener(kind, (event) => (began = event.timeStamp), true);
}
window.addEventListener('input', () => (asked = Number(root.dataset.asked)), true);
window.addEventListener('input', () => {
  const number = Number(root.dataset.asked);
  if (number !== asked) {
    clock.open.push({ number, began });
    close(); // what needs no answer is drawn by now
  }
});

function close() {
  const shown = clock.open.filter((move) => move.number <= drawn);
  clock.open = clock.open.filter((move) => move.number > drawn);
  if (shown.length > 0) {
    requestAnimationFrame(() => channel.port1.postMessage(shown.map((move) => move.began)));
  }
}

new MutationObserver(() => {
  const before = drawn;
  drawn = Number(root.dataset.drawn);
  clock.backwards += drawn < before ? 1 : 0;
  close();
}).observe(root, { attributes: true, attributeFilter: ['data-drawn'] });

channel.port2.onmessage = ({ data }) => {
  const end = performance.now();
  clock.times.push(...data.map((start) => end - start));
};

const status = document.getElementById('status');
new MutationObserver(() => {
  clock.saidSo ||= status.dataset.status === 'catching-up';
}).observe(status, { attributes: true });

window.sliderClock = clock;
