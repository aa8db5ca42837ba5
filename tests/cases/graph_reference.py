"""Answers questions about small graphs with a general-purpose graph library, for tests to compare with.

Reads one JSON object a line: {"switches", "links": [[a, b, count]], "split": [[switches of one half], [the other]], "hosts",
"crossings": [[from, to, parts of 2^20]]}. Writes one JSON object a line.
"""
import json
import sys

import networkx

for line in sys.stdin:
    question = json.loads(line)
    # Parallel links become nodes in the middle of each cable, so that the library counts paths cable by cable.
    fine = networkx.Graph()
    fine.add_nodes_from(range(question["switches"]))
    flow = networkx.DiGraph()
    flow.add_nodes_from(range(question["switches"]))
    for link, (a, b, count) in enumerate(question["links"]):
        for cable in range(count):
            fine.add_edge(a, ("cable", link, cable))
            fine.add_edge(("cable", link, cable), b)
        for x, y in ((a, b), (b, a)):
            before = flow.get_edge_data(x, y, {"capacity": 0})["capacity"]
            flow.add_edge(x, y, capacity=before + count)
    switches = range(question["switches"])
    crossed = networkx.edge_betweenness_centrality_subset(fine, switches, switches, normalized=False)
    loads = []
    for link, (a, _, count) in enumerate(question["links"]):
        loads.append(sum(crossed.get((a, ("cable", link, c)), crossed.get((("cable", link, c), a))) for c in range(count)))
    for side, nodes in zip(("source", "sink"), question["split"]):
        for node in nodes:
            ends = (side, node) if side == "source" else (node, side)
            flow.add_edge(*ends, capacity=question["hosts"])
    matching = networkx.Graph()
    for sender, receiver, parts in question["crossings"]:
        matching.add_edge(("from", sender), ("to", receiver), weight=parts)
    chosen = networkx.max_weight_matching(matching)
    print(json.dumps({
        "loads": loads,
        "flow": networkx.maximum_flow_value(flow, "source", "sink"),
        "matching": sum(matching.edges[pair]["weight"] for pair in chosen),
        "longest": max((d for _, row in networkx.all_pairs_shortest_path_length(fine) for n, d in row.items() if n in switches), default=0),
    }))
