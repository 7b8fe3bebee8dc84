/** Page scripts that stand in for what a headless browser lacks: a voice, and an ear. */

/** A voice that says everything in a moment and remembers what it said. */
export const voice = `
  window.spoken = [];
  speechSynthesis.speak = (said) => {
    if (said.text) spoken.push(said.text);
    setTimeout(() => { said.onstart?.(); setTimeout(() => said.onend?.(), 40); });
  };`;

/** A recogniser that hears what the test says, ends after each sentence, and keeps when it was begun. */
export const ear = `
  window.ear = { starts: [], errors: [], refuse: false, now: undefined };
  class Recogniser {
    start() {
      if (this.on) throw new Error('begun already');
      this.on = true;
      ear.now = this;
      ear.starts.push({ at: performance.now(), spoken: (window.spoken ?? []).length, local: this.processLocally });
      const error = ear.refuse ? 'not-allowed' : ear.errors.shift();
      if (error) setTimeout(() => { this.onerror?.({ error }); this.end(); });
    }
    end() { if (this.on) { this.on = false; this.onend?.(); } }
    abort() { setTimeout(() => this.end()); }
    static available = async () => window.earWhere ?? 'downloadable';
  }
  ear.hear = (text) => {
    if (!ear.now?.on) return false;
    ear.now.onresult?.({ resultIndex: 0, results: [Object.assign([{ transcript: text }], { isFinal: true })] });
    setTimeout(() => ear.now.end());
    return true;
  };
  window.SpeechRecognition = Recogniser;
  window.webkitSpeechRecognition = Recogniser;`;
