import { byId, make, setText } from './dom.js';
import { pictureName } from './save-picture.js';

/**
 * The ways in and out of the Bench: the shelf, files that are picked or dropped, saving under a
 * name, and files to take along.
 */

/** Largest file that is read [bytes]; a case is a hundredth of it. */
const MOST_BYTES = 262144;

/** What a failed request says: the server's words, or that there is no server. */
const wordsOf = (error) => (error instanceof TypeError ? NO_CONNECTION : error.message);

const NO_CONNECTION = 'No connection to the program. What you entered is kept; try again.';

/** Hands a file to the browser to keep. */
function keepFile(blob, name) {
  const link = make('a', { href: URL.createObjectURL(blob), download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
}

/** Opens a dialog by its button and closes it by its own. */
export function wireDialog(buttonId, dialogId, onOpen) {
  const dialog = byId(dialogId);
  byId(buttonId).addEventListener('click', () => {
    onOpen();
    dialog.showModal();
  });
  dialog.querySelector('[data-close]').addEventListener('click', () => dialog.close());
  dialog.addEventListener('click', (event) => {
    if (event.target === dialog) {
      dialog.close(); // A click beside it.
    }
  });
  return dialog;
}

/**
 * @param {Object} parts
 * @param {Object} parts.state
 * @param {Object} parts.server
 * @param {Object[]} parts.shelf
 * @param {function(): string} parts.measures code of the measures
 */
export function createFiles({ state, server, shelf, measures }) {
  let items = shelf;
  const openDialog = wireDialog('open', 'open-dialog', listShelf);
  wireDialog('save', 'save-dialog', () => {
    byId('save-name').value = state.now.saved.title;
    setText(byId('save-said'), '');
    byId('save-replace').hidden = true;
    setText(byId('export-said'), '');
  });

  function listShelf() {
    byId('file-problems').replaceChildren();
    byId('shelf').replaceChildren(...items.map(shelfItem));
  }

  function shelfItem(item) {
    const button = make(
      'button',
      { type: 'button', class: 'shelf-item', 'aria-current': item.id === state.now.saved.id ? 'true' : null },
      make('strong', {}, item.title),
      make('span', {}, item.story || (item.kind === 'saved' ? 'saved on this shelf' : '')),
    );
    button.disabled = item.kind === 'damaged';
    button.addEventListener('click', () => openItem(item));
    return make('li', {}, button);
  }

  async function openItem(item) {
    try {
      const answer = await server.get(`/bench/case?id=${encodeURIComponent(item.id)}`);
      if (answer.accepted === false) {
        complain(answer.problems);
        return;
      }
      openDialog.close();
      const { id, title, kind, fields } = answer;
      state.open({ id, title, kind, fields });
    } catch (error) {
      complain([{ message: wordsOf(error) }]);
    }
  }

  async function importFile(file) {
    if (file.size > MOST_BYTES) {
      complain([{ message: `${file.name} is too large for a case: at most 256 kB.` }]);
      return;
    }
    try {
      const answer = await server.json('/bench/open', { text: await file.text() });
      if (answer.accepted) {
        openDialog.close();
        state.open({ id: '', title: answer.title || file.name, kind: 'file', fields: answer.fields });
      } else {
        complain(answer.problems, file.name);
      }
    } catch (error) {
      complain([{ message: wordsOf(error) }]);
    }
  }

  /** Says in the dialog what a file is refused for; a dropped one opens it. */
  function complain(problems, name = '') {
    if (!openDialog.open) {
      listShelf();
      openDialog.showModal();
    }
    const place = (problem) => (problem.line > 0 ? `Line ${problem.line}: ` : '');
    byId('file-problems').replaceChildren(
      ...(name === '' ? [] : [make('p', {}, `${name} cannot be opened yet.`)]),
      make('ul', {}, ...problems.map((p) => make('li', {}, `${place(p)}${p.message}`))),
    );
  }

  byId('file').addEventListener('change', (event) => {
    const [file] = event.target.files;
    if (file !== undefined) {
      importFile(file);
    }
    event.target.value = '';
  });
  document.addEventListener('dragover', (event) => {
    if (event.dataTransfer?.types.includes('Files')) {
      event.preventDefault();
      document.body.classList.add('dropping');
    }
  });
  document.addEventListener('dragleave', (event) => {
    if (event.relatedTarget === null) {
      document.body.classList.remove('dropping');
    }
  });
  document.addEventListener('drop', (event) => {
    document.body.classList.remove('dropping');
    const [file] = event.dataTransfer?.files ?? [];
    if (file !== undefined) {
      event.preventDefault();
      importFile(file);
    }
  });

  async function save(replace) {
    const name = byId('save-name').value.trim();
    const said = byId('save-said');
    byId('save-replace').hidden = true;
    try {
      const body = { name, fields: state.now.fields, measures: measures(), replace };
      const answer = await server.json('/bench/save', body);
      if (answer.saved) {
        items = answer.shelf;
        state.markSaved(answer.id, answer.title);
        setText(said, `Saved on the shelf as ${answer.title}.`);
      } else {
        byId('save-replace').hidden = !answer.taken;
        setText(said, answer.problems.map((problem) => problem.message).join(' '));
      }
    } catch (error) {
      setText(said, wordsOf(error));
    }
  }

  byId('save-form').addEventListener('submit', (event) => {
    event.preventDefault();
    const { kind, title } = state.now.saved;
    save(kind === 'saved' && title === byId('save-name').value.trim());
  });
  byId('save-replace').addEventListener('click', () => save(true));

  document.querySelectorAll('[data-export]').forEach((button) =>
    button.addEventListener('click', () => exportFile(button.dataset.export)),
  );

  const ENDINGS = { yaml: '.yaml', csv: '-curve.csv', json: '-curve.json' };

  async function exportFile(kind) {
    const said = byId('export-said');
    try {
      const body = { fields: state.now.fields, measures: measures(), kind };
      const answer = await server.response('/bench/export', body);
      if (answer.ok) {
        keepFile(await answer.blob(), pictureName(state.now.saved.title) + ENDINGS[kind]);
        setText(said, 'The file is in your downloads.');
      } else {
        setText(said, 'No file yet: put right first what is wrong with the inputs.');
      }
    } catch (error) {
      setText(said, wordsOf(error));
    }
  }
}
