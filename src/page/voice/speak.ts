/** Says sentences aloud, one after another, and tells when it begins and ends. */
const startsWithinMilliseconds = 1_500;

export class Speaker {
  /** While this is above zero the microphone must not listen: the page would hear itself. */
  onSpeaking: (speaking: boolean) => void = () => {};
  onFailure: () => void = () => {};
  private queue: Promise<void> = Promise.resolve();
  private waiting = 0;

  get able(): boolean {
    return 'speechSynthesis' in window;
  }

  /** An empty utterance from within a touch lets later ones sound. */
  unlock(): void {
    if (this.able) speechSynthesis.speak(new SpeechSynthesisUtterance(''));
  }

  say(text: string, options: { lang: string }): void {
    if (!this.able || text === '') return;
    this.waiting += 1;
    this.queue = this.queue.then(async () => {
      this.onSpeaking(true);
      const spoken = await this.speak(text, options.lang);
      if (!spoken) this.onFailure();
      this.waiting -= 1;
      if (this.waiting === 0) this.onSpeaking(false);
    });
  }

  hush(): void {
    if (this.able) speechSynthesis.cancel();
  }

  /** Some browsers fail without a word: no start within a moment counts as a failure. */
  private speak(text: string, lang: string): Promise<boolean> {
    return new Promise((resolve) => {
      const utterance = new SpeechSynthesisUtterance(text);
      utterance.lang = lang;
      const giveUp = setTimeout(() => {
        speechSynthesis.cancel();
        resolve(false);
      }, startsWithinMilliseconds);
      utterance.onstart = () => clearTimeout(giveUp);
      utterance.onend = () => {
        clearTimeout(giveUp);
        resolve(true);
      };
      utterance.onerror = ({ error }) => {
        clearTimeout(giveUp);
        resolve(error === 'interrupted' || error === 'canceled');
      };
      speechSynthesis.speak(utterance);
    });
  }
}
