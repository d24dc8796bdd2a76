import { byId } from './dom.js';

/**
 * What lies open beside the pictures. On a desk inputs and kept setups share one column: where
 * setups are kept, one of the two lies open and the other gives way. On a phone both lie folded.
 *
 * @param {Object} parts
 * @param {MediaQueryList} parts.phone
 * @param {MediaQueryList} parts.desk
 * @param {function()} parts.onKept called when the kept setups were unfolded
 * @returns {{unfold: function(), show: function(boolean)}} `unfold` opens what a screen of that
 *     width has room for; `show` is told when the first setup is kept, and when the last is gone
 */
export function createFolds({ phone, desk, onKept }) {
  const inputs = byId('inputs-fold');
  const kept = byId('kept-fold');
  const isKept = () => !byId('kept').hidden;

  function giveWay(opened, other) {
    if (desk.matches && opened.open && isKept()) {
      other.open = false;
    }
  }

  inputs.addEventListener('toggle', () => giveWay(inputs, kept));
  kept.addEventListener('toggle', () => {
    giveWay(kept, inputs);
    if (kept.open) {
      onKept();
    }
  });

  function unfold() {
    kept.open = !phone.matches;
    inputs.open = desk.matches && !isKept();
  }

  phone.addEventListener('change', unfold);
  desk.addEventListener('change', unfold);

  return {
    unfold,
    show(isShown) {
      if (desk.matches) {
        kept.open = true;
        inputs.open = !isShown;
      }
    },
  };
}
