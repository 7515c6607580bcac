// As much of a page as the pen needs. Not a test itself.
import assert from "node:assert/strict";

export class FakeNode {
  constructor(name) {
    this.name = name;
    this.attributes = {};
    this.children = [];
  }

  setAttribute(key, value) {
    this.attributes[key] = value;
  }

  append(...children) {
    for (const child of children) {
      assert.ok(child instanceof FakeNode, "only nodes are drawn");
      assert.equal(child.parent, undefined, "a node stands in one place only");
      child.parent = this;
      this.children.push(child);
    }
  }

  all() {
    return [this, ...this.children.flatMap((child) => child.all())];
  }
}
