import { Label, show } from './svg.js';

/** Elements of a kind, made when they are first needed and hidden when they are not. */
export class Pool {
  constructor(make) {
    this.make = make;
    this.all = [];
    this.count = 0;
  }

  begin() {
    this.count = 0;
  }

  next() {
    if (this.count === this.all.length) {
      this.all.push(this.make());
    }
    return this.all[this.count++];
  }

  end() {
    this.all.forEach((element, i) => {
      const used = i < this.count;
      if (element instanceof Label) {
        if (!used) {
          element.hide();
        }
      } else {
        show(element, used);
      }
    });
  }
}
